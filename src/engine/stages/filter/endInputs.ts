import { quantity } from '../../fields/declare.ts';

/** What the filter is fed from and works into. */
export const endInputs = {
  sourceResistance: quantity({
    label: 'Fed from',
    symbol: 'R_S',
    unit: 'Ω',
    range: [0.1, 100_000],
    default: null,
    digits: 3,
    help: 'What really drives the filter. Blank: the resistance that it was designed for.',
  }),
  loadResistance: quantity({
    label: 'Works into',
    symbol: 'R_L',
    unit: 'Ω',
    range: [0.1, 100_000],
    default: null,
    digits: 3,
    help: 'What really loads the filter. Half or double the right resistance costs about 2 dB of ripple.',
  }),
};
