import { stage } from '../../fields/stage.ts';
import { carrierFields } from '../carrier/fields.ts';
import { coresFields } from '../cores/fields.ts';
import { outputFields } from '../output/fields.ts';
import { planFields } from '../plan/fields.ts';
import { transmitFields } from '../transmit/fields.ts';
import { windingsFields } from './fields.ts';
import { windingsReads } from './reads.ts';
import { workWindings } from './work.ts';
import { windingsWorkings } from './workings.ts';

export const windings = stage({
  fields: windingsFields,
  after: [planFields, carrierFields, transmitFields, coresFields, outputFields],
  reads: windingsReads,
  work: workWindings,
  workings: windingsWorkings,
});
