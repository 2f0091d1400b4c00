import { stage } from '../../fields/stage.ts';
import { planFields } from '../plan/fields.ts';
import { coresFields } from './fields.ts';
import { coresReads } from './reads.ts';
import { workCores } from './work.ts';
import { coresWorkings } from './workings.ts';

export const cores = stage({
  fields: coresFields,
  after: [planFields],
  reads: coresReads,
  work: workCores,
  workings: coresWorkings,
});
