import { choice, count, declare, quantity } from '../../fields/declare.ts';
import { maskInputs } from './maskInputs.ts';
import { spreadInputs } from './spreadInputs.ts';

/** How far parts are off, and what a finished filter must keep to: what the many builds start from. */
export const yieldFields = declare({
  key: 'yield',
  title: 'Yield',
  asks: 'How often does it come out, and which part should be better?',
  inputs: {
    ...maskInputs,
    ...spreadInputs,
    builds: count({
      label: 'Builds',
      symbol: 'N',
      range: [200, 100_000],
      default: 10_000,
      help: 'How many filters are made up. Ten thousand know a yield to one per cent.',
    }),
    seed: count({
      label: 'Seed',
      range: [0, 1_000_000],
      default: 1,
      help: 'The same seed gives the same builds again. Another one shows how much is chance.',
    }),
  },
  results: {
    usualLeast: quantity({
      label: 'Usual least width',
      symbol: 'B_lo',
      unit: 'Hz',
      digits: 4,
      help: 'A twentieth less than what was asked for: a start for a mask.',
    }),
    usualMost: quantity({
      label: 'Usual greatest width',
      symbol: 'B_hi',
      unit: 'Hz',
      digits: 4,
      help: 'A twentieth more than what was asked for.',
    }),
    basis: choice({
      label: 'Crystals',
      options: {
        alike: 'bought alike',
        chosen: 'chosen one by one',
      },
      help: 'Bought alike, their spread counts. Once each position has a crystal of its own, only the error of measuring it is left to chance.',
    }),
    spreadUsed: quantity({
      label: 'Deviation of the frequencies',
      symbol: 'sigma_f',
      unit: 'Hz',
      digits: 3,
      help: 'Standard deviation that each crystal’s series resonance is drawn with.',
    }),
    window: quantity({
      label: 'Window of the crystals',
      symbol: 'W_x',
      unit: 'Hz',
      digits: 3,
      help: 'All lie within it where they are sorted, 19 of 20 where they are not.',
    }),
    windowShare: quantity({
      label: 'Window over the width',
      symbol: 'w_x',
      unit: '%',
      digits: 3,
      help: 'A tenth of the width is hardly seen; a fifth costs a decibel of ripple.',
      source: 'builders’ rule of thumb',
    }),
    sureness: quantity({
      label: 'Uncertainty of the yield',
      symbol: 'u_y',
      unit: '%',
      digits: 2,
      help: 'At worst, for a yield of one half: nineteen times in twenty the true one is as near as this.',
    }),
  },
});
