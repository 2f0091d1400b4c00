import { stage } from '../../fields/stage.ts';
import { planFields } from '../plan/fields.ts';
import { transmitFields } from '../transmit/fields.ts';
import { windingsFields } from '../windings/fields.ts';
import { powerFields } from './fields.ts';
import { powerStageReads } from './reads.ts';
import { workPower } from './work.ts';
import { powerWorkings } from './workings.ts';

export const power = stage({
  fields: powerFields,
  after: [planFields, transmitFields, windingsFields],
  reads: powerStageReads,
  work: workPower,
  workings: powerWorkings,
});
