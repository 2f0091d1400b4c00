import type { StageWorkings } from '../../fields/workings.ts';
import { endWorkings } from './endWorkings.ts';
import { familyWorkings } from './familyWorkings.ts';
import type { filterFields } from './fields.ts';
import { figureWorkings } from './figureWorkings.ts';
import { fitWorkings } from './fitWorkings.ts';
import { partWorkings } from './partWorkings.ts';
import { placeWorkings } from './placeWorkings.ts';
import { responseWorkings } from './responseWorkings.ts';
import { synthesisWorkings } from './synthesisWorkings.ts';

/** How every figure of the Filter sheet comes about. */
export const filterWorkings: StageWorkings<typeof filterFields> = {
  ...synthesisWorkings,
  ...familyWorkings,
  ...placeWorkings,
  ...partWorkings,
  ...fitWorkings,
  ...endWorkings,
  ...responseWorkings,
  ...figureWorkings,
};
