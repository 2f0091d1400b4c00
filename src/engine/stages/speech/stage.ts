import { stage } from '../../fields/stage.ts';
import { carrierFields } from '../carrier/fields.ts';
import { filterFields } from '../filter/fields.ts';
import { hearFields } from '../hear/fields.ts';
import { planFields } from '../plan/fields.ts';
import { transmitFields } from '../transmit/fields.ts';
import { speechFields } from './fields.ts';
import { speechReads } from './reads.ts';
import { workSpeech } from './work.ts';
import { speechWorkings } from './workings.ts';

export const speech = stage({
  fields: speechFields,
  after: [planFields, filterFields, carrierFields, transmitFields, hearFields],
  reads: speechReads,
  work: workSpeech,
  workings: speechWorkings,
});
