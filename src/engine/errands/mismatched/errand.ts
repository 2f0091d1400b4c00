import { mismatchFields } from '../../stages/mismatch/fields.ts';
import { outputFields } from '../../stages/output/fields.ts';
import { planFields } from '../../stages/plan/fields.ts';
import { powerFields } from '../../stages/power/fields.ts';
import { transmitFields } from '../../stages/transmit/fields.ts';
import { errand } from '../errand.ts';
import { mismatchedWork } from './mismatchedWork.ts';
import { mismatchedReads } from './reads.ts';

/** The final exactly, as the antenna reflects at every angle. */
export const mismatchedErrand = errand({
  key: 'mismatched',
  of: [planFields, transmitFields, outputFields, mismatchFields, powerFields],
  reads: mismatchedReads,
  work: mismatchedWork,
});
