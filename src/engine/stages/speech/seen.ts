import type { Seen } from '../../fields/stage.ts';
import type { carrierFields } from '../carrier/fields.ts';
import type { filterFields } from '../filter/fields.ts';
import type { hearFields } from '../hear/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { transmitFields } from '../transmit/fields.ts';
import type { speechFields } from './fields.ts';
import type { speechReads } from './reads.ts';

/** What the stage is given. */
export type SpeechSeen = Seen<
  | typeof planFields
  | typeof filterFields
  | typeof carrierFields
  | typeof transmitFields
  | typeof hearFields
  | typeof speechFields,
  typeof speechReads
>;
