import { choice, count, quantity } from '../../fields/declare.ts';

/** What is asked for: how many crystals, how wide, which family. */
export const shapeInputs = {
  crystals: count({
    label: 'Crystals',
    symbol: 'n',
    range: [2, 12],
    default: 6,
    help: 'More crystals make steeper skirts and more loss. Four to eight are usual for speech.',
  }),
  bandwidth: quantity({
    label: 'Bandwidth wanted',
    symbol: 'B',
    unit: 'Hz',
    range: [50, 50_000],
    default: 2400,
    typical: [1800, 3000],
    digits: 4,
    help: 'Between the −3 dB points, losses of the crystals included. Speech: 1.8 to 2 kHz narrow, 2.3 to 2.5 usual, 3 wide.',
  }),
  family: choice({
    label: 'Family',
    options: {
      butterworth: 'Butterworth, flat',
      chebyshev: 'Chebyshev, equal ripple',
      equal: 'Equal capacitors, least loss',
    },
    default: 'chebyshev',
    help: 'Equal ripple is steepest; flat rings less; equal capacitors ask for one value only, and with many crystals have deep dips near the edges.',
  }),
  ripple: quantity({
    label: 'Ripple',
    symbol: 'A_r',
    unit: 'dB',
    range: [0.001, 3],
    default: 0.1,
    typical: [0.01, 1],
    digits: 4,
    help: 'How far a Chebyshev response may dip between its peaks, were the crystals without loss.',
  }),
};
