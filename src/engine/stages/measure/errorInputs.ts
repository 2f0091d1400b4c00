import { quantity } from '../../fields/declare.ts';

const practice = 'common practice, no source';

/** How far each kind of reading may be off. */
export const errorInputs = {
  frequencyError: quantity({
    label: 'Frequencies, error',
    symbol: 'e_f',
    unit: 'Hz',
    range: [0, 5000],
    default: 2,
    typical: [0.5, 25],
    digits: 2,
    help: 'Of one against another, not of the reference: a counter 1 Hz, a sweep half a step.',
    source: practice,
  }),
  levelError: quantity({
    label: 'Levels, error',
    symbol: 'e_a',
    unit: 'dB',
    range: [0, 3],
    default: 0.1,
    typical: [0.02, 0.5],
    digits: 4,
    help: 'Of a difference of levels: at the peak against the short circuit, and where 3 dB down is taken.',
    source: practice,
  }),
  capacitanceError: quantity({
    label: 'Capacitances, error',
    symbol: 'e_C',
    unit: 'F',
    range: [0, 10e-12],
    default: 0.1e-12,
    typical: [0.05e-12, 0.5e-12],
    digits: 2,
    help: 'Of C0 and of each capacitor fitted for the readings.',
    source: practice,
  }),
  jigError: quantity({
    label: 'Resistance of the jig, error',
    symbol: 'e_R',
    unit: '%',
    range: [0, 0.2],
    default: 0.01,
    typical: [0.005, 0.05],
    digits: 2,
    help: 'Resistors of 1 %, or how far an analyser’s ports are from 50 Ω.',
    source: practice,
  }),
  oscillatorError: quantity({
    label: 'The oscillator’s capacitance, error',
    symbol: 'e_L',
    unit: 'F',
    range: [0, 500e-12],
    default: 5e-12,
    typical: [1e-12, 20e-12],
    digits: 2,
    help: 'Where it is known or comes from its feedback capacitors: 5 % parts of 110 pF in series are 5 pF off.',
    source: practice,
  }),
} as const;
