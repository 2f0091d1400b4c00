import { choice, quantity } from '../../fields/declare.ts';

/** Crystal in series between two equal resistances. */
export const fixtureInputs = {
  jig: choice({
    label: 'Resistance at either end',
    options: { pi: '12.5 Ω, pi network', fifty: '50 Ω, plain jig', own: 'other' },
    default: 'pi',
    help: 'What the crystal looks into on both sides. IEC 60444 uses pi networks of resistors that show it 12.5 Ω.',
    source: 'IEC 60444-1',
  }),
  jigOwn: quantity({
    label: 'Resistance of the own jig',
    symbol: 'R_o',
    unit: 'Ω',
    range: [1, 5000],
    default: 50,
    typical: [10, 200],
    digits: 3,
    help: 'Equal on both sides, and resistive: pads close to the crystal make it so.',
  }),
  peak: quantity({
    label: 'Frequency of the peak',
    symbol: 'f_k',
    unit: 'Hz',
    range: [1e6, 40e6],
    default: null,
    digits: 8,
    help: 'Where most comes through.',
    reading: true,
  }),
  peakLoss: quantity({
    label: 'Loss at the peak',
    symbol: 'a_k',
    unit: 'dB',
    range: [0, 60],
    default: null,
    typical: [0.3, 6],
    digits: 4,
    help: 'Against a short circuit in the crystal’s place, not against the generator.',
    reading: true,
  }),
  width: quantity({
    label: 'Width of the peak at −3 dB',
    symbol: 'W_k',
    unit: 'Hz',
    range: [1, 1e6],
    default: null,
    typical: [100, 5000],
    digits: 4,
    help: 'Between the two frequencies at which it has fallen by 3 dB from the peak itself.',
    reading: true,
  }),
} as const;
