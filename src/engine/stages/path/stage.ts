import { stage } from '../../fields/stage.ts';
import { antennaFields } from '../antenna/fields.ts';
import { feedFields } from '../feed/fields.ts';
import { filterFields } from '../filter/fields.ts';
import { outputFields } from '../output/fields.ts';
import { planFields } from '../plan/fields.ts';
import { receiveFields } from '../receive/fields.ts';
import { pathFields } from './fields.ts';
import { pathReads } from './reads.ts';
import { workPath } from './work.ts';
import { pathWorkings } from './workings.ts';

export const path = stage({
  fields: pathFields,
  after: [planFields, filterFields, outputFields, receiveFields, antennaFields, feedFields],
  reads: pathReads,
  work: workPath,
  workings: pathWorkings,
});
