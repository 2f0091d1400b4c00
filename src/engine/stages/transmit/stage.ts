import { stage } from '../../fields/stage.ts';
import { carrierFields } from '../carrier/fields.ts';
import { convertFields } from '../convert/fields.ts';
import { filterFields } from '../filter/fields.ts';
import { frontFields } from '../front/fields.ts';
import { planFields } from '../plan/fields.ts';
import { transmitFields } from './fields.ts';
import { transmitReads } from './reads.ts';
import { workTransmit } from './work.ts';
import { transmitWorkings } from './workings.ts';

export const transmit = stage({
  fields: transmitFields,
  after: [planFields, filterFields, carrierFields, convertFields, frontFields],
  reads: transmitReads,
  work: workTransmit,
  workings: transmitWorkings,
});
