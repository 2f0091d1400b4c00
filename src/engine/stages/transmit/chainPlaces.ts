/** The places of a rig without conversion, in the signal's order. */
const beforeMixer = [
  'mic',
  'micOut',
  'audio',
  'modulator',
  'firstIn',
  'firstOut',
  'filterIn',
  'filterOut',
  'secondIn',
  'secondOut',
] as const;
const mixer = ['mixerIn', 'mixerOut', 'frontOut'] as const;
const third = ['thirdIn', 'thirdOut'] as const;
const behind = ['driverIn', 'driverOut', 'base', 'collector', 'antenna'] as const;

/** A place of the chain. */
export type Place =
  | (typeof beforeMixer)[number]
  | (typeof mixer)[number]
  | (typeof third)[number]
  | (typeof behind)[number];

/** What a rig's chain depends on. */
export interface ChainForm {
  readonly scheme: string;
  readonly thirdAmplifier: string;
}

const direct: readonly Place[] = [...beforeMixer, ...behind];
const converts: readonly Place[] = [...beforeMixer, ...mixer, ...behind];
const convertsWithThird: readonly Place[] = [...beforeMixer, ...mixer, ...third, ...behind];

/** Every place of a rig's chain in the signal's order. */
export const placesOf = ({ scheme, thirdAmplifier }: ChainForm): readonly Place[] => {
  if (scheme !== 'conversion') return direct;
  return thirdAmplifier === 'yes' ? convertsWithThird : converts;
};

/** What each place is called. */
export const placeNames: Readonly<Record<Place, string>> = {
  mic: 'Microphone',
  micOut: 'Microphone amplifier, collector',
  audio: 'Modulator, audio side',
  modulator: 'Modulator, output',
  firstIn: 'First amplifier, input',
  firstOut: 'First amplifier, collector',
  filterIn: 'Filter, input',
  filterOut: 'Filter, output',
  secondIn: 'Second amplifier, input',
  secondOut: 'Second amplifier, collector',
  mixerIn: 'Mixer, input',
  mixerOut: 'Mixer, output',
  frontOut: 'Band-pass, output',
  thirdIn: 'Third amplifier, input',
  thirdOut: 'Third amplifier, collector',
  driverIn: 'Driver, input',
  driverOut: 'Driver, collector',
  base: 'Final, base',
  collector: 'Final, collector',
  antenna: 'Antenna',
};

/** Is a place behind the crystal filter, where carrier and other sideband are held back? */
export const isBehindFilter = (place: Place): boolean =>
  direct.indexOf(place) >= direct.indexOf('filterOut') || !direct.includes(place);
