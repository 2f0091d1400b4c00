import type { Seen } from '../../fields/stage.ts';
import type { carrierFields } from '../carrier/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { convertFields } from './fields.ts';
import type { convertReads } from './reads.ts';

/** What the stage is given. */
export type ConvertSeen = Seen<
  typeof planFields | typeof carrierFields | typeof convertFields,
  typeof convertReads
>;
