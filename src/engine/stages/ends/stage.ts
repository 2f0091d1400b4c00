import { stage } from '../../fields/stage.ts';
import { filterFields } from '../filter/fields.ts';
import { transmitFields } from '../transmit/fields.ts';
import { endsFields } from './fields.ts';
import { endsReads } from './reads.ts';
import { workEnds } from './work.ts';
import { endsWorkings } from './workings.ts';

export const ends = stage({
  fields: endsFields,
  after: [filterFields, transmitFields],
  reads: endsReads,
  work: workEnds,
  workings: endsWorkings,
});
