import { stage } from '../../fields/stage.ts';
import { bagFields } from '../bag/fields.ts';
import { measureFields } from '../measure/fields.ts';
import { planFields } from '../plan/fields.ts';
import { sweepFields } from '../sweep/fields.ts';
import { quartzFields } from './fields.ts';
import { quartzReads } from './reads.ts';
import { workQuartz } from './work.ts';
import { quartzWorkings } from './workings.ts';

export const quartz = stage({
  fields: quartzFields,
  after: [planFields, measureFields, sweepFields, bagFields],
  reads: quartzReads,
  work: workQuartz,
  workings: quartzWorkings,
});
