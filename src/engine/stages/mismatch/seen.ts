import type { Seen } from '../../fields/stage.ts';
import type { outputFields } from '../output/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { transmitFields } from '../transmit/fields.ts';
import type { mismatchFields } from './fields.ts';
import type { mismatchReads } from './reads.ts';

/** What Mismatch is given to work with. */
export type MismatchSeen = Seen<
  typeof planFields | typeof transmitFields | typeof outputFields | typeof mismatchFields,
  typeof mismatchReads
>;
