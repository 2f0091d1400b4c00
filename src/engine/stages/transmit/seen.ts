import type { Seen } from '../../fields/stage.ts';
import type { carrierFields } from '../carrier/fields.ts';
import type { convertFields } from '../convert/fields.ts';
import type { filterFields } from '../filter/fields.ts';
import type { frontFields } from '../front/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { transmitFields } from './fields.ts';
import type { transmitReads } from './reads.ts';

/** The values that Transmit is given. */
export type TransmitSeen = Seen<
  | typeof planFields
  | typeof filterFields
  | typeof carrierFields
  | typeof convertFields
  | typeof frontFields
  | typeof transmitFields,
  typeof transmitReads
>;

/** What the final doesn't look at: all that comes from filter, carrier and band-pass. */
export const besideFinal = [
  'ends',
  'endsLoad',
  'filterLoss',
  'filterFrequency',
  'attenuation',
  'carrierFrequency',
  'suppression1k',
  'suppressionWorst',
  'frontLoss',
  'frontLeftovers',
  'micLevel',
  'micFitted',
] as const satisfies readonly (keyof TransmitSeen)[];

/** What the final is given. */
export type FinalSeen = Omit<TransmitSeen, (typeof besideFinal)[number]>;
