import { stage } from '../../fields/stage.ts';
import { planFields } from '../plan/fields.ts';
import { antennaFields } from './fields.ts';
import { antennaReads } from './reads.ts';
import { workAntenna } from './work.ts';
import { antennaWorkings } from './workings.ts';

export const antenna = stage({
  fields: antennaFields,
  after: [planFields],
  reads: antennaReads,
  work: workAntenna,
  workings: antennaWorkings,
});
