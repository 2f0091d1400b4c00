import type { Seen } from '../../fields/stage.ts';
import type { pathFields } from '../path/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { transmitFields } from '../transmit/fields.ts';
import type { hearFields } from './fields.ts';
import type { hearReads } from './reads.ts';

/** What the stage is given. */
export type HearSeen = Seen<
  typeof planFields | typeof transmitFields | typeof pathFields | typeof hearFields,
  typeof hearReads
>;
