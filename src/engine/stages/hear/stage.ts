import { stage } from '../../fields/stage.ts';
import { pathFields } from '../path/fields.ts';
import { planFields } from '../plan/fields.ts';
import { transmitFields } from '../transmit/fields.ts';
import { hearFields } from './fields.ts';
import { hearReads } from './reads.ts';
import { workHear } from './work.ts';
import { hearWorkings } from './workings.ts';

export const hear = stage({
  fields: hearFields,
  after: [planFields, transmitFields, pathFields],
  reads: hearReads,
  work: workHear,
  workings: hearWorkings,
});
