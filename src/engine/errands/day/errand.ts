import { antennaFields } from '../../stages/antenna/fields.ts';
import { feedFields } from '../../stages/feed/fields.ts';
import { filterFields } from '../../stages/filter/fields.ts';
import { outputFields } from '../../stages/output/fields.ts';
import { pathFields } from '../../stages/path/fields.ts';
import { pathReads } from '../../stages/path/reads.ts';
import { planFields } from '../../stages/plan/fields.ts';
import { receiveFields } from '../../stages/receive/fields.ts';
import { errand } from '../errand.ts';
import { dayWork } from './dayWork.ts';

/** A day of the path: every hour, every distance, by whichever way brings most. */
export const dayErrand = errand({
  key: 'day',
  of: [
    planFields,
    filterFields,
    outputFields,
    receiveFields,
    antennaFields,
    feedFields,
    pathFields,
  ],
  reads: pathReads,
  work: dayWork,
});
