import { stage } from '../../fields/stage.ts';
import { planFields } from '../plan/fields.ts';
import { quartzFields } from './fields.ts';
import { quartzReads } from './reads.ts';
import { workQuartz } from './work.ts';
import { quartzWorkings } from './workings.ts';

export const quartz = stage({
  fields: quartzFields,
  after: [planFields],
  reads: quartzReads,
  work: workQuartz,
  workings: quartzWorkings,
});
