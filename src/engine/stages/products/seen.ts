import type { Seen } from '../../fields/stage.ts';
import type { carrierFields } from '../carrier/fields.ts';
import type { convertFields } from '../convert/fields.ts';
import type { frontFields } from '../front/fields.ts';
import type { planFields } from '../plan/fields.ts';
import type { productsFields } from './fields.ts';
import type { productsReads } from './reads.ts';

/** What the stage is given. */
export type ProductsSeen = Seen<
  | typeof planFields
  | typeof carrierFields
  | typeof convertFields
  | typeof frontFields
  | typeof productsFields,
  typeof productsReads
>;
