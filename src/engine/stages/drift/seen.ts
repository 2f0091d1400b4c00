import type { Seen } from '../../fields/stage.ts';
import type { bagFields } from '../bag/fields.ts';
import type { carrierFields } from '../carrier/fields.ts';
import type { filterFields } from '../filter/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { driftFields } from './fields.ts';
import type { driftReads } from './reads.ts';

/** What the stage is given. */
export type DriftSeen = Seen<
  | typeof planFields
  | typeof bagFields
  | typeof filterFields
  | typeof carrierFields
  | typeof driftFields,
  typeof driftReads
>;

type Needed = 'carrier' | 'fs' | 'lm' | 'rm' | 'c0' | 'together' | 'divider' | 'gm' | 'cpi';

/** The same, with what is needed of the carrier before anything can be said. */
export type Placed = Omit<DriftSeen, Needed> & {
  readonly [K in Needed]: number;
};
