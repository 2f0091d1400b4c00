import { declare } from '../../fields/declare.ts';
import { sweepInputs } from './inputs.ts';
import { sweepResults } from './resultFields.ts';

/** A sweep through one crystal in a fixture, and the equivalent circuit that fits it. */
export const sweepFields = declare({
  key: 'sweep',
  title: 'Sweep',
  asks: 'What crystal makes this sweep?',
  inputs: sweepInputs,
  results: sweepResults,
});
