import { stage } from '../../fields/stage.ts';
import { bagFields } from './fields.ts';
import { bagReads } from './reads.ts';
import { workBag } from './work.ts';
import { bagWorkings } from './workings.ts';

export const bag = stage({
  fields: bagFields,
  after: [],
  reads: bagReads,
  work: workBag,
  workings: bagWorkings,
});
