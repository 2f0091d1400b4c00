import { stage } from '../../fields/stage.ts';
import { bagFields } from '../bag/fields.ts';
import { carrierFields } from '../carrier/fields.ts';
import { filterFields } from '../filter/fields.ts';
import { planFields } from '../plan/fields.ts';
import { driftFields } from './fields.ts';
import { driftReads } from './reads.ts';
import { workDrift } from './work.ts';
import { driftWorkings } from './workings.ts';

export const drift = stage({
  fields: driftFields,
  after: [planFields, bagFields, filterFields, carrierFields],
  reads: driftReads,
  work: workDrift,
  workings: driftWorkings,
});
