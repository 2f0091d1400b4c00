import { stage } from '../../fields/stage.ts';
import { carrierFields } from '../carrier/fields.ts';
import { convertFields } from '../convert/fields.ts';
import { planFields } from '../plan/fields.ts';
import { frontFields } from './fields.ts';
import { frontReads } from './reads.ts';
import { workFront } from './work.ts';
import { frontWorkings } from './workings.ts';

export const front = stage({
  fields: frontFields,
  after: [planFields, carrierFields, convertFields],
  reads: frontReads,
  work: workFront,
  workings: frontWorkings,
});
