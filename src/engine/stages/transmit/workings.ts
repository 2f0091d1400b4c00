import type { StageWorkings } from '../../fields/workings.ts';
import { amplifierWorkings } from './amplifierWorkings.ts';
import { biasWorkings } from './biasWorkings.ts';
import { chainWorkings } from './chainWorkings.ts';
import type { transmitFields } from './fields.ts';
import { heatWorkings } from './heatWorkings.ts';
import { levelWorkings } from './levelWorkings.ts';
import { modulatorWorkings } from './modulatorWorkings.ts';
import { nodeWorkings } from './nodeWorkings.ts';
import { powerWorkings } from './powerWorkings.ts';
import { unwantedWorkings } from './unwantedWorkings.ts';

export const transmitWorkings: StageWorkings<typeof transmitFields> = {
  ...chainWorkings,
  ...levelWorkings,
  ...modulatorWorkings,
  ...biasWorkings,
  ...nodeWorkings,
  ...unwantedWorkings,
  ...amplifierWorkings,
  ...powerWorkings,
  ...heatWorkings,
};
