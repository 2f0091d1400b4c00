import type { Seen } from '../../fields/stage.ts';
import type { planFields } from '../plan/fields.ts';
import type { transmitFields } from '../transmit/fields.ts';
import type { suggestFields } from './fields.ts';
import type { suggestReads } from './reads.ts';

/** What Suggest is given to work with. */
export type SuggestSeen = Seen<
  typeof planFields | typeof transmitFields | typeof suggestFields,
  typeof suggestReads
>;
