import type { StageWorkings } from '../../fields/workings.ts';
import { arrivalWorkings } from './arrivalWorkings.ts';
import { exposureWorkings } from './exposureWorkings.ts';
import type { pathFields } from './fields.ts';
import { groundWorkings } from './groundWorkings.ts';
import { lineWorkings } from './lineWorkings.ts';
import { reachWorkings } from './reachWorkings.ts';
import { skyWorkings } from './skyWorkings.ts';

export const pathWorkings: StageWorkings<typeof pathFields> = {
  ...arrivalWorkings,
  ...skyWorkings,
  ...lineWorkings,
  ...groundWorkings,
  ...exposureWorkings,
  ...reachWorkings,
};
