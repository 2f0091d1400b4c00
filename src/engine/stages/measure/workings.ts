import type { StageWorkings } from '../../fields/workings.ts';
import { circuitWorkings, crystalWorkings } from './circuitWorkings.ts';
import { doubtWorkings } from './doubtWorkings.ts';
import type { measureFields } from './fields.ts';
import { shortWorkings } from './shortWorkings.ts';

export const measureWorkings: StageWorkings<typeof measureFields> = {
  ...crystalWorkings,
  ...circuitWorkings,
  ...doubtWorkings,
  ...shortWorkings,
};
