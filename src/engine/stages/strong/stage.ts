import { stage } from '../../fields/stage.ts';
import { convertFields } from '../convert/fields.ts';
import { filterFields } from '../filter/fields.ts';
import { frontFields } from '../front/fields.ts';
import { outputFields } from '../output/fields.ts';
import { planFields } from '../plan/fields.ts';
import { receiveFields } from '../receive/fields.ts';
import { transmitFields } from '../transmit/fields.ts';
import { strongFields } from './fields.ts';
import { strongReads } from './reads.ts';
import { workStrong } from './work.ts';
import { strongWorkings } from './workings.ts';

export const strong = stage({
  fields: strongFields,
  after: [
    planFields,
    filterFields,
    convertFields,
    frontFields,
    transmitFields,
    outputFields,
    receiveFields,
  ],
  reads: strongReads,
  work: workStrong,
  workings: strongWorkings,
});
