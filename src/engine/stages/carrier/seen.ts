import type { Seen } from '../../fields/stage.ts';
import type { filterFields } from '../filter/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { quartzFields } from '../quartz/fields.ts';
import type { carrierFields } from './fields.ts';
import type { carrierReads } from './reads.ts';

/** What the stage is given. */
export type CarrierSeen = Seen<
  typeof planFields | typeof quartzFields | typeof filterFields | typeof carrierFields,
  typeof carrierReads
>;
