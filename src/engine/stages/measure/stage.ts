import { stage } from '../../fields/stage.ts';
import { measureFields } from './fields.ts';
import { measureReads } from './reads.ts';
import { workMeasure } from './work.ts';
import { measureWorkings } from './workings.ts';

export const measure = stage({
  fields: measureFields,
  after: [],
  reads: measureReads,
  work: workMeasure,
  workings: measureWorkings,
});
