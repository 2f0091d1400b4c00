import { stage } from '../../fields/stage.ts';
import { carrierFields } from '../carrier/fields.ts';
import { filterFields } from '../filter/fields.ts';
import { outputFields } from '../output/fields.ts';
import { planFields } from '../plan/fields.ts';
import { receiveFields } from '../receive/fields.ts';
import { supplyFields } from '../supply/fields.ts';
import { transmitFields } from '../transmit/fields.ts';
import { benchFields } from './fields.ts';
import { benchReads } from './reads.ts';
import { workBench } from './work.ts';
import { benchWorkings } from './workings.ts';

export const bench = stage({
  fields: benchFields,
  after: [
    planFields,
    filterFields,
    carrierFields,
    transmitFields,
    outputFields,
    receiveFields,
    supplyFields,
  ],
  reads: benchReads,
  work: workBench,
  workings: benchWorkings,
});
