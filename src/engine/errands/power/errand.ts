import { outputFields } from '../../stages/output/fields.ts';
import { planFields } from '../../stages/plan/fields.ts';
import { powerFields } from '../../stages/power/fields.ts';
import { transmitFields } from '../../stages/transmit/fields.ts';
import { errand } from '../errand.ts';
import { powerWork } from './powerWork.ts';
import { powerReads } from './reads.ts';

/** The final exactly: harmonics, heat, two tones, from the steady state of a large-signal transistor. */
export const powerErrand = errand({
  key: 'power',
  of: [planFields, transmitFields, outputFields, powerFields],
  reads: powerReads,
  work: powerWork,
});
