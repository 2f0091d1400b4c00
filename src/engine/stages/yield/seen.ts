import type { Seen } from '../../fields/stage.ts';
import type { carrierFields } from '../carrier/fields.ts';
import type { filterFields } from '../filter/fields.ts';
import type { yieldFields } from './fields.ts';
import type { yieldReads } from './reads.ts';

/** What the stage is given. */
export type YieldSeen = Seen<
  typeof filterFields | typeof carrierFields | typeof yieldFields,
  typeof yieldReads
>;
