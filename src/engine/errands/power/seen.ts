import type { Seen } from '../../fields/stage.ts';
import type { outputFields } from '../../stages/output/fields.ts';
import type { planFields } from '../../stages/plan/fields.ts';
import type { powerFields } from '../../stages/power/fields.ts';
import type { transmitFields } from '../../stages/transmit/fields.ts';
import type { powerReads } from './reads.ts';

/** The values that the power stage's errand is given. */
export type PowerSeen = Seen<
  typeof planFields | typeof transmitFields | typeof outputFields | typeof powerFields,
  typeof powerReads
>;
