import { stage } from '../../fields/stage.ts';
import { antennaFields } from '../antenna/fields.ts';
import { planFields } from '../plan/fields.ts';
import { feedFields } from './fields.ts';
import { feedReads } from './reads.ts';
import { workFeed } from './work.ts';
import { feedWorkings } from './workings.ts';

export const feed = stage({
  fields: feedFields,
  after: [planFields, antennaFields],
  reads: feedReads,
  work: workFeed,
  workings: feedWorkings,
});
