import { amplifierInputs } from './amplifierInputs.ts';
import { driverInputs } from './driverInputs.ts';
import { heatInputs } from './heatInputs.ts';
import { micInputs } from './micInputs.ts';
import { modulatorInputs } from './modulatorInputs.ts';
import { ownSmallInputs } from './ownSmallInputs.ts';
import { powerInputs } from './powerInputs.ts';
import { speechInputs } from './speechInputs.ts';

/** All that the user may say of the transmitter. */
export const transmitInputs = {
  ...speechInputs,
  ...modulatorInputs,
  ...micInputs,
  ...amplifierInputs,
  ...driverInputs,
  ...ownSmallInputs,
  ...powerInputs,
  ...heatInputs,
} as const;
