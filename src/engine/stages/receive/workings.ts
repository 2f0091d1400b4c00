import type { StageWorkings } from '../../fields/workings.ts';
import { audioWorkings } from './audioWorkings.ts';
import type { receiveFields } from './fields.ts';
import { noiseWorkings } from './noiseWorkings.ts';
import { soundWorkings } from './soundWorkings.ts';

export const receiveWorkings: StageWorkings<typeof receiveFields> = {
  ...noiseWorkings,
  ...audioWorkings,
  ...soundWorkings,
};
