import type { Seen } from '../../fields/stage.ts';
import type { planFields } from '../plan/fields.ts';
import type { receiveFields } from '../receive/fields.ts';
import type { transmitFields } from '../transmit/fields.ts';
import type { supplyFields } from './fields.ts';
import type { supplyReads } from './reads.ts';

/** What the stage is given. */
export type SupplySeen = Seen<
  typeof planFields | typeof transmitFields | typeof receiveFields | typeof supplyFields,
  typeof supplyReads
>;
