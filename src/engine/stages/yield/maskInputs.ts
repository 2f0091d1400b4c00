import { quantity } from '../../fields/declare.ts';

const least = 'Blank: nothing is asked.';

/** What a finished filter must keep to. Each may be blank. */
export const maskInputs = {
  widthLeast: quantity({
    label: 'Width at −3 dB at least',
    symbol: 'B_min',
    unit: 'Hz',
    range: [10, 100_000],
    default: null,
    typical: [1800, 2600],
    digits: 4,
    help: least,
  }),
  widthMost: quantity({
    label: 'at most',
    symbol: 'B_max',
    unit: 'Hz',
    range: [10, 100_000],
    default: null,
    typical: [2200, 3200],
    digits: 4,
    help: least,
  }),
  rippleMost: quantity({
    label: 'Ripple at most',
    symbol: 'A_rip',
    unit: 'dB',
    range: [0, 60],
    default: null,
    typical: [0.5, 2],
    digits: 3,
    help: 'A decibel is not heard in speech. Blank: nothing is asked.',
  }),
  lossMost: quantity({
    label: 'Loss at most',
    symbol: 'A_loss',
    unit: 'dB',
    range: [0, 100],
    default: null,
    typical: [2, 6],
    digits: 3,
    help: least,
  }),
  carrierLeast: quantity({
    label: 'Carrier down at least',
    symbol: 'A_car',
    unit: 'dB',
    range: [0, 100],
    default: null,
    typical: [12, 25],
    digits: 3,
    help: 'By the filter, with the carrier where the Carrier sheet puts it. Blank: nothing is asked.',
  }),
  oppositeLeast: quantity({
    label: 'Other sideband down at least',
    symbol: 'A_opp',
    unit: 'dB',
    range: [0, 120],
    default: null,
    typical: [20, 40],
    digits: 3,
    help: 'At the worst tone from 300 to 2700 Hz. Blank: nothing is asked.',
  }),
} as const;
