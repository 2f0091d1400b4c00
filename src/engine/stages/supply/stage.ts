import { stage } from '../../fields/stage.ts';
import { planFields } from '../plan/fields.ts';
import { receiveFields } from '../receive/fields.ts';
import { transmitFields } from '../transmit/fields.ts';
import { supplyFields } from './fields.ts';
import { supplyReads } from './reads.ts';
import { workSupply } from './work.ts';
import { supplyWorkings } from './workings.ts';

export const supply = stage({
  fields: supplyFields,
  after: [planFields, transmitFields, receiveFields],
  reads: supplyReads,
  work: workSupply,
  workings: supplyWorkings,
});
