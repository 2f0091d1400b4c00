import { choice, quantity } from '../../fields/declare.ts';

/** How the crystal was measured, and its holder's capacitance, which every way needs. */
export const commonInputs = {
  method: choice({
    label: 'Way of measuring',
    options: {
      none: 'no readings',
      fixture: 'peak in a fixture',
      shift: 'oscillator shift',
      pair: 'series and parallel resonance',
      sweep: 'fit of a whole sweep',
    },
    default: 'none',
    help: 'What Quartz takes Lm, Cm and the rest from, unless they are typed there.',
  }),
  c0Read: quantity({
    label: 'Capacitance between the pins',
    symbol: 'C_r',
    unit: 'F',
    range: [1e-13, 50e-12],
    default: null,
    typical: [2e-12, 7e-12],
    digits: 3,
    help: 'With a capacitance meter that works far below the crystal’s frequency. The can stays free.',
    reading: true,
  }),
  meterStray: quantity({
    label: 'What the meter shows without it',
    symbol: 'C_z',
    unit: 'F',
    range: [0, 20e-12],
    default: 0,
    typical: [0.1e-12, 2e-12],
    digits: 3,
    help: 'Clips and leads as they were, the crystal taken out: it is taken off the reading.',
    reading: true,
  }),
  beside: quantity({
    label: 'Stray across the crystal in the jig',
    symbol: 'C_j',
    unit: 'F',
    range: [0, 20e-12],
    default: 0,
    typical: [0.1e-12, 1e-12],
    digits: 2,
    help: 'Between the jig’s two contacts. It lies beside the holder while the crystal is swept.',
  }),
} as const;
