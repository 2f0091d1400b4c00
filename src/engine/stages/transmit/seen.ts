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
