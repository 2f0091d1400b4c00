import type { Seen } from '../../fields/stage.ts';
import type { carrierFields } from '../carrier/fields.ts';
import type { coresFields } from '../cores/fields.ts';
import type { outputFields } from '../output/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { transmitFields } from '../transmit/fields.ts';
import type { windingsFields } from './fields.ts';
import type { windingsReads } from './reads.ts';

/** What Windings is given to work with. */
export type WindingsSeen = Seen<
  | typeof planFields
  | typeof carrierFields
  | typeof transmitFields
  | typeof coresFields
  | typeof outputFields
  | typeof windingsFields,
  typeof windingsReads
>;
