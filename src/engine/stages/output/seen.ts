import type { Seen } from '../../fields/stage.ts';
import type { coresFields } from '../cores/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { transmitFields } from '../transmit/fields.ts';
import type { outputFields } from './fields.ts';
import type { outputReads } from './reads.ts';

/** What Output is given to work with. */
export type OutputSeen = Seen<
  typeof planFields | typeof transmitFields | typeof coresFields | typeof outputFields,
  typeof outputReads
>;
