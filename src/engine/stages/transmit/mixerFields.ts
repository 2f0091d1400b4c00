import { quantity, table, words } from '../../fields/declare.ts';

/** What conversion adds to the transmitter: an amplifier behind the band-pass, and leftovers. */
export const mixerResults = {
  thirdGain: quantity({
    label: 'Third amplifier’s gain',
    symbol: 'G_3',
    unit: 'dB',
    digits: 3,
    help: 'The same circuit at the operating frequency, from a source that matches it.',
  }),
  thirdInput: quantity({
    label: 'Third amplifier’s input resistance',
    symbol: 'R_in3',
    unit: 'Ω',
    digits: 3,
    help: 'With its load in place, at the operating frequency.',
  }),
  thirdOutput: quantity({
    label: 'Third amplifier’s output resistance',
    symbol: 'R_out3',
    unit: 'Ω',
    digits: 3,
    help: 'Driven from a source that matches its input.',
  }),
  thirdClip: quantity({
    label: 'Most the third amplifier can give',
    symbol: 'L_third',
    unit: 'dBm',
    digits: 3,
    help: 'Where current or voltage at its collector runs out.',
  }),
  unwanted: table({
    label: 'What else comes out of the mixer, at the antenna',
    help: 'Behind the band-pass and carried along with the signal. The output network takes those above the band down further; that is not counted here.',
    columns: {
      what: words({ label: 'Signal', help: 'Where it comes from.' }),
      frequency: quantity({
        label: 'Frequency',
        symbol: 'f_u',
        unit: 'Hz',
        digits: 5,
        help: 'Of this signal.',
      }),
      below: quantity({
        label: 'Against the signal',
        symbol: 'A_left',
        unit: 'dB',
        digits: 3,
        help: 'Below peak envelope power: dBc.',
      }),
      power: quantity({
        label: 'At the antenna',
        symbol: 'P_u',
        unit: 'W',
        digits: 2,
        help: 'What is left of it at full power.',
      }),
    },
  }),
} as const;
