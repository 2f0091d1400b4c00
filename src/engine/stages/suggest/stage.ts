import { stage } from '../../fields/stage.ts';
import { planFields } from '../plan/fields.ts';
import { transmitFields } from '../transmit/fields.ts';
import { suggestFields } from './fields.ts';
import { suggestReads } from './reads.ts';
import { workSuggest } from './work.ts';
import { suggestWorkings } from './workings.ts';

export const suggest = stage({
  fields: suggestFields,
  after: [planFields, transmitFields],
  reads: suggestReads,
  work: workSuggest,
  workings: suggestWorkings,
});
