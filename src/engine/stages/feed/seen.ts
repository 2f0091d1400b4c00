import type { Seen } from '../../fields/stage.ts';
import type { antennaFields } from '../antenna/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { feedFields } from './fields.ts';
import type { feedReads } from './reads.ts';

/** What the stage is given. */
export type FeedSeen = Seen<
  typeof planFields | typeof antennaFields | typeof feedFields,
  typeof feedReads
>;
