import { stage } from '../../fields/stage.ts';
import { bagFields } from '../bag/fields.ts';
import { filterFields } from '../filter/fields.ts';
import { planFields } from '../plan/fields.ts';
import { carrierFields } from './fields.ts';
import { carrierReads } from './reads.ts';
import { workCarrier } from './work.ts';
import { carrierWorkings } from './workings.ts';

export const carrier = stage({
  fields: carrierFields,
  after: [planFields, bagFields, filterFields],
  reads: carrierReads,
  work: workCarrier,
  workings: carrierWorkings,
});
