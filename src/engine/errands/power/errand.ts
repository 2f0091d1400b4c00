import { outputFields } from '../../stages/output/fields.ts';
import { planFields } from '../../stages/plan/fields.ts';
import { transmitFields } from '../../stages/transmit/fields.ts';
import { windingsFields } from '../../stages/windings/fields.ts';
import { errand } from '../errand.ts';
import { powerWork } from './powerWork.ts';
import { powerReads } from './reads.ts';

/** The final exactly: harmonics, heat, two tones, from the steady state of a large-signal transistor. */
export const powerErrand = errand({
  key: 'power',
  of: [planFields, transmitFields, outputFields, windingsFields],
  reads: powerReads,
  work: powerWork,
});
