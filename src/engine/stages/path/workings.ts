import type { StageWorkings } from '../../fields/workings.ts';
import { arrivalWorkings } from './arrivalWorkings.ts';
import { exposureWorkings } from './exposureWorkings.ts';
import type { pathFields } from './fields.ts';
import { groundWorkings } from './groundWorkings.ts';
import { heardWorkings } from './heardWorkings.ts';
import { lineWorkings } from './lineWorkings.ts';
import { noiseWorkings } from './noiseWorkings.ts';
import { reachWorkings } from './reachWorkings.ts';
import { skyWorkings } from './skyWorkings.ts';
import { sumWorkings } from './sumWorkings.ts';

export const pathWorkings: StageWorkings<typeof pathFields> = {
  ...arrivalWorkings,
  ...noiseWorkings,
  ...heardWorkings,
  ...sumWorkings,
  ...skyWorkings,
  ...lineWorkings,
  ...groundWorkings,
  ...exposureWorkings,
  ...reachWorkings,
};
