import { stage } from '../../fields/stage.ts';
import { coresFields } from '../cores/fields.ts';
import { planFields } from '../plan/fields.ts';
import { transmitFields } from '../transmit/fields.ts';
import { outputFields } from './fields.ts';
import { outputReads } from './reads.ts';
import { workOutput } from './work.ts';
import { outputWorkings } from './workings.ts';

export const output = stage({
  fields: outputFields,
  after: [planFields, transmitFields, coresFields],
  reads: outputReads,
  work: workOutput,
  workings: outputWorkings,
});
