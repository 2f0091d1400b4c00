import { choice, count, declare, quantity, table, words } from '../../fields/declare.ts';
import { productsInputs } from './inputs.ts';

const hertz = (label: string, symbol: string, help: string, digits = 7) =>
  quantity({ label, symbol, unit: 'Hz', digits, help });
const whole = (label: string, symbol: string, help: string) => count({ label, symbol, help });

const product = {
  name: words({ label: 'Product', help: 'So many times the one, so many times the other.' }),
  order: whole('Order', 'N_o', 'Both multiples together. Low orders are strong.'),
};

/** What the two oscillators make together, besides what is wanted. */
export const productsFields = declare({
  key: 'products',
  title: 'Products',
  asks: 'Do multiples of the oscillators fall on the signal?',
  inputs: productsInputs,
  results: {
    sent: table({
      label: 'Sent beside the signal',
      help: 'Products of oscillator and signal that the band-pass leaves strongest, worst first.',
      columns: {
        ...product,
        at: hertz('Oscillator', 'f_at', 'Where in the tuning range it comes nearest.'),
        frequency: hertz('Frequency', 'f_x', 'Of the product there.'),
        beside: hertz('From the signal', 'f_d', 'Less the operating frequency there.', 4),
        before: quantity({
          label: 'At the mixer',
          symbol: 'A_0',
          unit: 'dB',
          digits: 0,
          help: 'Against the signal, by the rule of thumb in the workings: some 10 dB either way.',
        }),
        left: quantity({
          label: 'Behind the band-pass',
          symbol: 'A_x',
          unit: 'dB',
          digits: 0,
          help: 'Against the signal.',
        }),
        outcome: choice({
          label: 'Outcome',
          options: { holds: 'holds', close: 'close', fails: 'fails' },
          help: 'Against what the band-pass is asked for; close within 6 dB.',
        }),
      },
    }),
    heard: table({
      label: 'Heard without an antenna',
      help: 'Products of the two oscillators alone that fall on the signal or into the filter: whistles that change when you tune.',
      columns: {
        ...product,
        into: choice({
          label: 'Falls on',
          options: { signal: 'the signal', filter: 'the filter' },
          help: 'Through the antenna’s way in, or straight into the filter.',
        }),
        at: hertz('Oscillator', 'f_at', 'Where in the tuning range it comes nearest.'),
        frequency: hertz('Frequency', 'f_x', 'Of the product there.'),
        pitch: hertz('Beside it by', 'f_d', 'Zero: it passes through while tuning.', 4),
      },
    }),
    lowestSent: words({
      label: 'Sent within the band-pass',
      help: 'The lowest order that falls there. The higher the better.',
    }),
    lowestHeard: words({
      label: 'Heard in the receiver',
      help: 'The lowest order that falls on the signal or into the filter. The higher the better.',
    }),
    choices: table({
      label: 'Other crystals, other side',
      help: 'What common crystals would give for the same operating frequency, best first. Orders not shown: none was found.',
      columns: {
        marking: hertz('Crystals', 'f_m', 'Their marking.', 6),
        side: choice({
          label: 'Oscillator at',
          options: { difference: 'difference', sum: 'sum' },
          help: 'Of operating and intermediate frequency.',
        }),
        oscillator: hertz('Conversion oscillator', 'f_lo', 'To the marking itself.', 5),
        image: hertz('Image', 'f_im', 'The further away the easier.', 5),
        sent: whole('Lowest order sent', 'N_t', 'Within the band-pass.'),
        heard: whole('Lowest order heard', 'N_h', 'Within the voice.'),
      },
    }),
  },
});
