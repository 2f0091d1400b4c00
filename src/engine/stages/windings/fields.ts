import { declare, quantity } from '../../fields/declare.ts';
import { airCoils } from './airTable.ts';
import { coresNeeded } from './coresNeeded.ts';
import { windingsInputs } from './inputs.ts';
import { spreads } from './spreads.ts';
import { coils } from './tables.ts';
import {
  chokes,
  transformerEdges,
  transformerLosses,
  transformerMixes,
  transformers,
} from './transformerTable.ts';

/** Turns, wire and cores for every coil and transformer of the rig. */
export const windingsFields = declare({
  key: 'windings',
  title: 'Windings',
  asks: 'How many turns of which wire on which core?',
  inputs: windingsInputs,
  results: {
    coils,
    spreads,
    airCoils,
    coresNeeded,
    transformers,
    transformerEdges,
    transformerMixes,
    transformerLosses,
    chokes,
    leastQ: quantity({
      label: 'Lowest Q of the coils',
      symbol: 'Q_min',
      unit: '1',
      digits: 2,
      help: 'Compare it with the Q that Output reckons with.',
    }),
    wireTotal: quantity({
      label: 'Wire for the coils',
      symbol: 'l_sum',
      unit: 'm',
      digits: 2,
      help: 'All tuned coils together.',
    }),
  },
});
