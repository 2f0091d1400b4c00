import { stage } from '../../fields/stage.ts';
import { filterFields } from '../filter/fields.ts';
import { compareFields } from './fields.ts';
import { compareReads } from './reads.ts';
import { workCompare } from './work.ts';
import { compareWorkings } from './workings.ts';

export const compare = stage({
  fields: compareFields,
  after: [filterFields],
  reads: compareReads,
  work: workCompare,
  workings: compareWorkings,
});
