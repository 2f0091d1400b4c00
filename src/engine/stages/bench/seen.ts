import type { Seen } from '../../fields/stage.ts';
import type { carrierFields } from '../carrier/fields.ts';
import type { filterFields } from '../filter/fields.ts';
import type { outputFields } from '../output/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { receiveFields } from '../receive/fields.ts';
import type { supplyFields } from '../supply/fields.ts';
import type { transmitFields } from '../transmit/fields.ts';
import type { benchFields } from './fields.ts';
import type { benchReads } from './reads.ts';

/** The values that Bench is given. */
export type BenchSeen = Seen<
  | typeof planFields
  | typeof filterFields
  | typeof carrierFields
  | typeof transmitFields
  | typeof outputFields
  | typeof receiveFields
  | typeof supplyFields
  | typeof benchFields,
  typeof benchReads
>;
