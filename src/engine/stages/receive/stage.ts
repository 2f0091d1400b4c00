import { stage } from '../../fields/stage.ts';
import { antennaFields } from '../antenna/fields.ts';
import { convertFields } from '../convert/fields.ts';
import { feedFields } from '../feed/fields.ts';
import { filterFields } from '../filter/fields.ts';
import { frontFields } from '../front/fields.ts';
import { outputFields } from '../output/fields.ts';
import { planFields } from '../plan/fields.ts';
import { transmitFields } from '../transmit/fields.ts';
import { receiveFields } from './fields.ts';
import { receiveReads } from './reads.ts';
import { workReceive } from './work.ts';
import { receiveWorkings } from './workings.ts';

export const receive = stage({
  fields: receiveFields,
  after: [
    planFields,
    filterFields,
    convertFields,
    frontFields,
    transmitFields,
    outputFields,
    antennaFields,
    feedFields,
  ],
  reads: receiveReads,
  work: workReceive,
  workings: receiveWorkings,
});
