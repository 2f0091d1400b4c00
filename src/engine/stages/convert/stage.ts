import { stage } from '../../fields/stage.ts';
import { carrierFields } from '../carrier/fields.ts';
import { planFields } from '../plan/fields.ts';
import { convertFields } from './fields.ts';
import { convertReads } from './reads.ts';
import { workConvert } from './work.ts';
import { convertWorkings } from './workings.ts';

export const convert = stage({
  fields: convertFields,
  after: [planFields, carrierFields],
  reads: convertReads,
  work: workConvert,
  workings: convertWorkings,
});
