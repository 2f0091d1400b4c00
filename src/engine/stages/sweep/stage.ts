import { stage } from '../../fields/stage.ts';
import { measureFields } from '../measure/fields.ts';
import { planFields } from '../plan/fields.ts';
import { sweepFields } from './fields.ts';
import { sweepReads } from './reads.ts';
import { workSweep } from './work.ts';
import { sweepWorkings } from './workings.ts';

export const sweep = stage({
  fields: sweepFields,
  after: [planFields, measureFields],
  reads: sweepReads,
  work: workSweep,
  workings: sweepWorkings,
});
