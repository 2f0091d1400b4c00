import { count, quantity } from '../../fields/declare.ts';

/** How far to look for products. */
export const productsInputs = {
  most: count({
    label: 'Orders looked at',
    range: [3, 15],
    default: 10,
    help: 'Multiples of the one oscillator and of the other, together. Up to the tenth have been heard in simple rigs.',
  }),
  window: quantity({
    label: 'Heard within',
    symbol: 'f_w',
    unit: 'Hz',
    range: [300, 20e3],
    default: 3000,
    digits: 2,
    help: 'A product nearer than this to the signal is a whistle in the receiver.',
    source: 'width of the voice',
  }),
} as const;
