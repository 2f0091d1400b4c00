import type { Seen } from '../../fields/stage.ts';
import type { bagFields } from '../bag/fields.ts';
import type { filterFields } from '../filter/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { carrierFields } from './fields.ts';
import type { carrierReads } from './reads.ts';

/** What the stage is given. */
export type CarrierSeen = Seen<
  typeof planFields | typeof bagFields | typeof filterFields | typeof carrierFields,
  typeof carrierReads
>;
