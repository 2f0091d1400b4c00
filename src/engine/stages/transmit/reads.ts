import { transmitInputs } from './inputs.ts';

type InputKey = keyof typeof transmitInputs;

/** Own entries that may stay blank. */
const blank = [
  'micFitted',
  'micInput',
  'micCurrent',
  'conversionLoss',
  'null',
  'amplifierCurrent',
  'driverCurrent',
  'ownVce',
  'ownIc',
  'ownFt',
  'ownToCase',
  'ownToAmbient',
] as const satisfies readonly InputKey[];

type Blank = (typeof blank)[number];
type OwnReads = { readonly [K in InputKey]: `transmit.${K}${K extends Blank ? '?' : ''}` };

const own = Object.fromEntries(
  Object.keys(transmitInputs).map((key) => [
    key,
    `transmit.${key}${(blank as readonly string[]).includes(key) ? '?' : ''}`,
  ]),
) as OwnReads;

/**
 * What Transmit reads. The final can be worked out without a filter, so what comes from Filter and
 * Carrier may be missing: then the levels wait, and the rest does not.
 */
export const transmitReads = {
  ...own,
  frequency: 'plan.nominal',
  filterFrequency: 'plan.filterFrequency?',
  scheme: 'plan.scheme',
  oscillatorLevel: 'convert.oscillatorLevel',
  signalLevel: 'convert.signalLevel',
  mixerLoss: 'convert.mixerLoss',
  frontEnd: 'front.end',
  frontLoss: 'front.loss?',
  frontLeftovers: 'front.leftovers?',
  supply: 'plan.supply',
  pep: 'plan.pep',
  pepLevel: 'plan.pepLevel',
  antenna: 'plan.antenna',
  ambient: 'plan.ambient',
  ends: 'filter.ends?',
  endsLoad: 'filter.endsLoad?',
  filterLoss: 'filter.loss?',
  attenuation: 'carrier.attenuation?',
  carrierFrequency: 'carrier.frequency?',
  suppression1k: 'carrier.suppression1k?',
  suppressionWorst: 'carrier.suppressionWorst?',
} as const;
