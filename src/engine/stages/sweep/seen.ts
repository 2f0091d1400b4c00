import type { Seen } from '../../fields/stage.ts';
import type { measureFields } from '../measure/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { sweepFields } from './fields.ts';
import type { sweepReads } from './reads.ts';

/** The values that Sweep is given. */
export type SweepSeen = Seen<
  typeof planFields | typeof measureFields | typeof sweepFields,
  typeof sweepReads
>;
