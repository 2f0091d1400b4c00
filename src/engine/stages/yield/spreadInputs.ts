import { choice, quantity } from '../../fields/declare.ts';

const relative = (
  label: string,
  symbol: string,
  usual: number,
  typical: readonly [number, number],
  help: string,
) =>
  quantity({
    label,
    symbol,
    unit: '%',
    range: [0, 0.6],
    default: usual,
    typical,
    digits: 3,
    help,
    source: 'common practice, no source',
  });

/** How far parts are from what they should be. */
export const spreadInputs = {
  tolerance: relative(
    'Capacitors within ±',
    't_C',
    0.05,
    [0.01, 0.1],
    'As printed on the bag: 5 % is usual for NP0.',
  ),
  capacitorShape: choice({
    label: 'Within the tolerance',
    options: {
      even: 'anywhere alike',
      normal: 'more near the middle',
    },
    default: 'even',
    help: 'Near the middle: the deviation is half the tolerance, and none lies outside. Anywhere is the safer guess.',
  }),
  spread: quantity({
    label: 'Spread of the crystals’ frequency',
    symbol: 'sigma_x',
    unit: 'Hz',
    range: [0, 5000],
    default: 50,
    typical: [10, 300],
    digits: 3,
    help: 'Standard deviation. A bag as it comes has 50 to 300 Hz; of a sorted handful it is about 0.29 of the window.',
  }),
  frequencyShape: choice({
    label: 'The crystals are',
    options: {
      normal: 'as they come',
      even: 'sorted into a window',
    },
    default: 'normal',
    help: 'Sorted: alike anywhere in a window of √12 standard deviations, and none outside.',
  }),
  measuring: quantity({
    label: 'Error of measuring a crystal',
    symbol: 'sigma_m',
    unit: 'Hz',
    range: [0, 1000],
    default: 5,
    typical: [1, 30],
    digits: 3,
    help: 'Counts instead of the spread once each position has its own measured crystal. Fixture, counter and temperature.',
  }),
  lmSpread: relative(
    'Spread of Lm',
    's_L',
    0.01,
    [0.003, 0.05],
    'Standard deviation within a lot; the frequency keeps its own.',
  ),
  rmSpread: relative(
    'Spread of Rm, and so of Q',
    's_R',
    0.2,
    [0.1, 0.5],
    'Standard deviation within a lot. Cheap crystals differ a good deal.',
  ),
  c0Spread: relative(
    'Spread of C0',
    's_0',
    0.03,
    [0.01, 0.1],
    'Standard deviation within a lot, cans and wiring included.',
  ),
  endTolerance: relative(
    'End resistances within ±',
    't_R',
    0.05,
    [0.01, 0.2],
    'What the amplifiers or transformers really show; each end by itself.',
  ),
} as const;
