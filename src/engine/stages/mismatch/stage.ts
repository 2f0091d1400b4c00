import { stage } from '../../fields/stage.ts';
import { outputFields } from '../output/fields.ts';
import { planFields } from '../plan/fields.ts';
import { transmitFields } from '../transmit/fields.ts';
import { mismatchFields } from './fields.ts';
import { mismatchReads } from './reads.ts';
import { workMismatch } from './work.ts';
import { mismatchWorkings } from './workings.ts';

export const mismatch = stage({
  fields: mismatchFields,
  after: [planFields, transmitFields, outputFields],
  reads: mismatchReads,
  work: workMismatch,
  workings: mismatchWorkings,
});
