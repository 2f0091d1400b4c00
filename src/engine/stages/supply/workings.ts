import type { StageWorkings } from '../../fields/workings.ts';
import { batteryWorkings } from './batteryWorkings.ts';
import { budgetWorkings } from './budgetWorkings.ts';
import type { supplyFields } from './fields.ts';
import { wiringWorkings } from './wiringWorkings.ts';

export const supplyWorkings: StageWorkings<typeof supplyFields> = {
  ...budgetWorkings,
  ...batteryWorkings,
  ...wiringWorkings,
};
