import type { Seen } from '../../fields/stage.ts';
import type { carrierFields } from '../carrier/fields.ts';
import type { convertFields } from '../convert/fields.ts';
import type { filterFields } from '../filter/fields.ts';
import type { frontFields } from '../front/fields.ts';
import type { planFields } from '../plan/fields.ts';
import { amplifierInputs } from './amplifierInputs.ts';
import { driverInputs } from './driverInputs.ts';
import type { transmitFields } from './fields.ts';
import { micInputs } from './micInputs.ts';
import { ownSmallInputs } from './ownSmallInputs.ts';
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

/** All that the small stages depend on. */
export const smallKeys = [
  ...(Object.keys({ ...micInputs, ...amplifierInputs, ...driverInputs, ...ownSmallInputs }) as (
    | keyof typeof micInputs
    | keyof typeof amplifierInputs
    | keyof typeof driverInputs
    | keyof typeof ownSmallInputs
  )[]),
  'micInput',
  'micCurrent',
  'modulatorImpedance',
  'finalInput',
  'supply',
  'frequency',
  'filterFrequency',
  'scheme',
  'frontEnd',
  'ambient',
] as const satisfies readonly (keyof TransmitSeen)[];

/** What the small stages are given. */
export type SmallSeen = Pick<TransmitSeen, (typeof smallKeys)[number]>;
