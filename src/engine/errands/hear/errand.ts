import { bagFields } from '../../stages/bag/fields.ts';
import { carrierFields } from '../../stages/carrier/fields.ts';
import { compareFields } from '../../stages/compare/fields.ts';
import { filterFields } from '../../stages/filter/fields.ts';
import { hearFields } from '../../stages/hear/fields.ts';
import { planFields } from '../../stages/plan/fields.ts';
import { quartzFields } from '../../stages/quartz/fields.ts';
import { errand } from '../errand.ts';
import { hearWork, mergeHeard } from './hearWork.ts';
import { hearReads } from './reads.ts';

/** Makes what a voice sounds like through the present filter, and through those beside it. */
export const hearErrand = errand({
  key: 'hear',
  of: [planFields, bagFields, quartzFields, filterFields, carrierFields, compareFields, hearFields],
  reads: hearReads,
  work: hearWork,
  split: { shares: 2, merge: mergeHeard },
});
