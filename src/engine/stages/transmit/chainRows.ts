import type { RowOf } from '../../fields/kinds.ts';
import { dbOfPowerRatio, dbOfVoltageRatio } from '../../quantity/decibel.ts';
import { dbmOfWatts, voltsOfDbm } from '../../quantity/power.ts';
import type { chain } from './chainFields.ts';
import { isBehindFilter, type Place, placeNames, placesOf } from './chainPlaces.ts';
import { levelPlan, mismatchLoss } from './levelPlan.ts';
import type { TransmitSeen } from './seen.ts';
import { filterFrequencyOf } from './smallCircuits.ts';
import type { SmallFigures } from './smallFigures.ts';

/** How far below its carrier a diode modulator begins to flatten, dB. Common practice, no source. */
export const MODULATOR_MARGIN = 6;

type Row = RowOf<typeof chain.columns>;

/** Power gain of what lies between each place and the next, dB. */
type Gains = Readonly<Record<Place, number>>;

/** What the levels are worked from besides the small stages. */
interface ChainRig {
  readonly filterLoss: number;
  readonly modulatorLoss: number;
  /** Of the band-pass; nothing in a rig without conversion. */
  readonly frontLoss: number;
}

/** Gains from the modulator's audio side to the antenna, by the place that they begin at. */
export function gainsBehindAudio(
  seen: TransmitSeen,
  small: SmallFigures,
  rig: ChainRig,
): Omit<Gains, 'mic' | 'micOut'> {
  const { amplifierGain, thirdGain, driverGain } = small.results;
  return {
    audio: -rig.modulatorLoss,
    modulator:
      -seen.pad - mismatchLoss(small.first.input, seen.modulatorImpedance, filterFrequencyOf(seen)),
    firstIn: amplifierGain,
    firstOut: 0,
    filterIn: -rig.filterLoss,
    filterOut: 0,
    secondIn: amplifierGain,
    secondOut: 0,
    mixerIn: -seen.mixerLoss,
    mixerOut: -rig.frontLoss,
    frontOut: 0,
    thirdIn: thirdGain ?? 0,
    thirdOut: 0,
    driverIn: driverGain,
    driverOut: 0,
    base: seen.finalGain,
    collector: -seen.network,
    antenna: 0,
  };
}

/** All of them added up, in a rig's own places. */
export const gainFromAudio = (seen: TransmitSeen, gains: Omit<Gains, 'mic' | 'micOut'>): number =>
  placesOf(seen).reduce(
    (sum, place) => (place === 'mic' || place === 'micOut' ? sum : sum + gains[place]),
    0,
  );

/** Every point of the chain: level, voltages, impedances, headroom. */
export function chainRows(
  seen: TransmitSeen,
  small: SmallFigures,
  rig: ChainRig & {
    readonly ends: number;
    readonly endsLoad: number;
    /** How far the carrier lies below a sideband at the modulator, dB; null if that isn't known. */
    readonly modulatorNull: number | null;
    readonly filterSource: number;
    readonly collectorLoad: number;
    readonly outputImpedance: number;
    /** Voltage gain of the microphone amplifier in use, dB. */
    readonly micGain: number;
    /** Drive against full power, dB. */
    readonly over: number;
    /** How much more gain the microphone amplifier has as built with its volume full up, dB. */
    readonly builtUp: number;
  },
): Row[] {
  const { mic, results } = small;
  const micPower = rig.micGain + dbOfPowerRatio(results.micLoad / seen.modulatorImpedance);
  const micFirst =
    dbOfVoltageRatio(mic.volts) + dbOfPowerRatio(results.micLoad / results.followerInput);
  const places = placesOf(seen);
  const between: Gains = {
    mic: micFirst,
    micOut: micPower - micFirst,
    ...gainsBehindAudio(seen, small, rig),
  };
  const gains = places.slice(0, -1).map((place) => between[place]);
  const { onward } = levelPlan(gains, 0);
  const points = pointsOf(seen, small, rig);
  let before = 0;
  return places.map((place, i) => {
    const { load, source = null, clip = null, limit = null } = points[place];
    const toAntenna = onward[i] ?? 0;
    const level = seen.pepLevel + rig.over - toAntenna;
    const comes =
      i === 0 ? level : before + (gains[i - 1] ?? 0) + (place === 'audio' ? rig.builtUp : 0);
    const forward = clip === null ? comes : Math.min(comes, clip);
    before = forward;
    return {
      point: placeNames[place],
      level,
      vpp: voltsOfDbm(level, 'Vpp', load),
      vrms: voltsOfDbm(level, 'Vrms', load),
      load,
      source,
      gain: gains[i] ?? null,
      toAntenna,
      clip,
      headroom: clip === null ? null : clip - level,
      limit,
      forward,
      forwardVpp: voltsOfDbm(forward, 'Vpp', load),
      ...leftovers(seen, rig.modulatorNull, place, level),
    };
  });
}

/** A place: what the signal meets there, where it comes from, and the most that it may be. */
interface Point {
  /** Ω */
  readonly load: number;
  readonly source?: number | null;
  /** dBm, and what sets it. */
  readonly clip?: number | null;
  readonly limit?: string;
}

function pointsOf(
  seen: TransmitSeen,
  small: SmallFigures,
  rig: Parameters<typeof chainRows>[2],
): Readonly<Record<Place, Point>> {
  const { mic, follower, first, second, third, driver, results } = small;
  const collector = (limitedBy: 'current' | 'voltage') =>
    limitedBy === 'current' ? 'standing current' : 'supply voltage';
  return {
    mic: { load: results.micLoad },
    micOut: {
      load: results.followerInput,
      source: results.followerSource,
      clip: results.micClip,
      limit:
        mic.limitedBy === 'current' ? 'standing current' : 'supply of the microphone amplifier',
    },
    audio: {
      load: seen.modulatorImpedance,
      source: follower.output.r,
      clip: results.followerClip,
      limit:
        follower.limitedBy === 'current'
          ? 'microphone amplifier’s current'
          : 'supply of the microphone amplifier',
    },
    modulator: {
      load: seen.modulatorImpedance,
      source: seen.modulatorImpedance,
      clip: dbmOfWatts(seen.carrierDrive) - MODULATOR_MARGIN - rig.modulatorLoss,
      limit: 'carrier drive of the modulator',
    },
    firstIn: { load: first.input.r, source: seen.modulatorImpedance },
    firstOut: {
      load: seen.amplifierLoad,
      source: first.output.r,
      clip: results.amplifierClip,
      limit: collector(first.limitedBy),
    },
    filterIn: {
      load: rig.ends,
      source: rig.filterSource,
      clip: dbmOfWatts(seen.filterDrive),
      limit: 'crystals',
    },
    filterOut: { load: rig.endsLoad, source: rig.endsLoad },
    secondIn: { load: first.input.r, source: first.input.r },
    secondOut: {
      load: seen.amplifierLoad,
      source: second.output.r,
      clip: results.amplifierClip,
      limit: collector(second.limitedBy),
    },
    mixerIn: {
      load: seen.frontEnd,
      source: mixerSource(seen, second.output.r),
      clip: seen.oscillatorLevel - MODULATOR_MARGIN,
      limit: 'oscillator drive of the mixer',
    },
    mixerOut: { load: seen.frontEnd, source: seen.frontEnd },
    frontOut: { load: seen.frontEnd, source: seen.frontEnd },
    thirdIn: { load: third?.input.r ?? seen.frontEnd, source: third?.input.r ?? null },
    thirdOut: {
      load: seen.amplifierLoad,
      source: third?.output.r ?? null,
      clip: results.thirdClip,
      limit: collector(third?.limitedBy ?? 'current'),
    },
    driverIn: { load: driver.input.r, source: results.driverSource },
    driverOut: {
      load: seen.driverLoad,
      source: (driver.output.r * seen.driverLoad) / seen.finalInput,
      clip: results.driverClip,
      limit: collector(driver.limitedBy),
    },
    base: { load: seen.finalInput, source: driver.output.r },
    collector: {
      load: rig.collectorLoad,
      source: rig.outputImpedance,
      clip: seen.pepLevel + seen.network,
      limit: 'supply voltage',
    },
    antenna: { load: seen.antenna },
  };
}

/** What the mixer sees of the second amplifier, through a transformer that makes of it the load. */
const mixerSource = (seen: TransmitSeen, output: number): number =>
  (output * seen.frontEnd) / seen.amplifierLoad;

/** Carrier and other sideband at a place: both are there from the modulator's output on. */
function leftovers(seen: TransmitSeen, modulatorNull: number | null, place: Place, level: number) {
  if (place === 'mic' || place === 'micOut' || place === 'audio') {
    return { carrier: null, opposite: null, oppositeWorst: null };
  }
  const behind = isBehindFilter(place);
  const less = (by: number | null) => (by === null ? null : level - by);
  const filter = behind ? seen.attenuation : 0;
  return {
    carrier: modulatorNull === null || filter === null ? null : level - modulatorNull - filter,
    opposite: behind ? less(seen.suppression1k) : level,
    oppositeWorst: behind ? less(seen.suppressionWorst) : level,
  };
}
