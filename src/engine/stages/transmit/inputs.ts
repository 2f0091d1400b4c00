import { amplifierInputs } from './amplifierInputs.ts';
import { heatInputs } from './heatInputs.ts';
import { powerInputs } from './powerInputs.ts';
import { speechInputs } from './speechInputs.ts';

/** All that the user may say of the transmitter. */
export const transmitInputs = {
  ...speechInputs,
  ...amplifierInputs,
  ...powerInputs,
  ...heatInputs,
} as const;
