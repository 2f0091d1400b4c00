import { declare } from '../../fields/declare.ts';
import { commonInputs } from './commonInputs.ts';
import { errorInputs } from './errorInputs.ts';
import { fixtureInputs } from './fixtureInputs.ts';
import { pairInputs } from './pairInputs.ts';
import { measureResults } from './resultFields.ts';
import { shiftInputs } from './shiftInputs.ts';

/** Bench readings of one crystal, and what they make of it. */
export const measureFields = declare({
  key: 'measure',
  title: 'Measure',
  asks: 'What do the readings on the bench make of this crystal?',
  inputs: { ...commonInputs, ...fixtureInputs, ...shiftInputs, ...pairInputs, ...errorInputs },
  results: measureResults,
});
