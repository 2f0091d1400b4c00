import { stage } from '../../fields/stage.ts';
import { bagFields } from '../bag/fields.ts';
import { planFields } from '../plan/fields.ts';
import { quartzFields } from '../quartz/fields.ts';
import { filterFields } from './fields.ts';
import { filterReads } from './reads.ts';
import { workFilter } from './work.ts';
import { filterWorkings } from './workings.ts';

export const filter = stage({
  fields: filterFields,
  after: [planFields, bagFields, quartzFields],
  reads: filterReads,
  work: workFilter,
  workings: filterWorkings,
});
