import type { StageWorkings } from '../../fields/workings.ts';
import type { filterFields } from './fields.ts';
import { figureWorkings } from './figureWorkings.ts';
import { partWorkings } from './partWorkings.ts';
import { responseWorkings } from './responseWorkings.ts';
import { synthesisWorkings } from './synthesisWorkings.ts';

/** How every figure of the Filter sheet comes about. */
export const filterWorkings: StageWorkings<typeof filterFields> = {
  ...synthesisWorkings,
  ...partWorkings,
  ...responseWorkings,
  ...figureWorkings,
};
