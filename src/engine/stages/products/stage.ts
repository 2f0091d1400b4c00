import { stage } from '../../fields/stage.ts';
import { carrierFields } from '../carrier/fields.ts';
import { convertFields } from '../convert/fields.ts';
import { frontFields } from '../front/fields.ts';
import { planFields } from '../plan/fields.ts';
import { productsFields } from './fields.ts';
import { productsReads } from './reads.ts';
import { workProducts } from './work.ts';
import { productsWorkings } from './workings.ts';

export const products = stage({
  fields: productsFields,
  after: [planFields, carrierFields, convertFields, frontFields],
  reads: productsReads,
  work: workProducts,
  workings: productsWorkings,
});
