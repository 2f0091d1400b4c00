import type { Seen } from '../../fields/stage.ts';
import type { planFields } from '../plan/fields.ts';
import type { transmitFields } from '../transmit/fields.ts';
import type { windingsFields } from '../windings/fields.ts';
import type { powerFields } from './fields.ts';
import type { powerStageReads } from './reads.ts';

/** The values that the final's stage is given. */
export type PowerStageSeen = Seen<
  typeof planFields | typeof transmitFields | typeof windingsFields | typeof powerFields,
  typeof powerStageReads
>;
