import type { Seen } from '../../fields/stage.ts';
import type { bagFields } from '../../stages/bag/fields.ts';
import type { carrierFields } from '../../stages/carrier/fields.ts';
import type { compareFields } from '../../stages/compare/fields.ts';
import type { filterFields } from '../../stages/filter/fields.ts';
import type { hearFields } from '../../stages/hear/fields.ts';
import type { planFields } from '../../stages/plan/fields.ts';
import type { quartzFields } from '../../stages/quartz/fields.ts';
import type { Beside } from '../errand.ts';
import type { hearReads } from './reads.ts';

/** What the errand is given. */
export type HearSeen = Seen<
  | typeof planFields
  | typeof bagFields
  | typeof quartzFields
  | typeof filterFields
  | typeof carrierFields
  | typeof compareFields
  | typeof hearFields,
  typeof hearReads
> &
  Beside;
