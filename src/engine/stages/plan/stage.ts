import { stage } from '../../fields/stage.ts';
import { planFields } from './fields.ts';
import { planReads } from './reads.ts';
import { workPlan } from './work.ts';
import { planWorkings } from './workings.ts';

export const plan = stage({
  fields: planFields,
  after: [],
  reads: planReads,
  work: workPlan,
  workings: planWorkings,
});
