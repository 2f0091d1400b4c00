import { declare } from '../../fields/declare.ts';
import { powerInputs } from './inputs.ts';
import { powerResults } from './results.ts';

/** The final between its driver, its feed and its network: what the exact answer needs to know. */
export const powerFields = declare({
  key: 'power',
  title: 'Final',
  asks: 'Does the final make its power clean, cool and steady?',
  inputs: powerInputs,
  results: powerResults,
});
