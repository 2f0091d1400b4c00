import { stage } from '../../fields/stage.ts';
import { carrierFields } from '../carrier/fields.ts';
import { filterFields } from '../filter/fields.ts';
import { yieldFields } from './fields.ts';
import { yieldReads } from './reads.ts';
import { workYield } from './work.ts';
import { yieldWorkings } from './workings.ts';

// `yield` is a word of the language.
export const yields = stage({
  fields: yieldFields,
  after: [filterFields, carrierFields],
  reads: yieldReads,
  work: workYield,
  workings: yieldWorkings,
});
