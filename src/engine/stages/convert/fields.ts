import { choice, declare, quantity, table, words } from '../../fields/declare.ts';
import { convertInputs } from './inputs.ts';

const hertz = (label: string, symbol: string, help: string, digits = 8) =>
  quantity({ label, symbol, unit: 'Hz', digits, help });

const sides = { lower: 'Lower (LSB)', upper: 'Upper (USB)' } as const;

/** The second oscillator, and what the mixer makes of the filter's sideband. */
export const convertFields = declare({
  key: 'convert',
  title: 'Conversion',
  asks: 'Which oscillator brings the sideband to the band, and which way round?',
  inputs: convertInputs,
  results: {
    oscillator: hertz(
      'Conversion oscillator',
      'f_lo',
      'With the carrier where the Carrier sheet puts it.',
    ),
    oscillatorTop: hertz(
      'At the top of the range',
      'f_lo2',
      'It moves with the operating frequency, up or down.',
    ),
    lands: hertz(
      'Suppressed carrier',
      'f_tx',
      'At the antenna: where a receiver must be tuned to. It should be the operating frequency.',
    ),
    off: hertz('Beside the plan by', 'f_off', 'Suppressed carrier less operating frequency.', 3),
    sum: words({
      label: 'How it adds up',
      help: 'The mixer makes the sum and the difference; this is the one that reaches the antenna.',
    }),
    comesOut: choice({
      label: 'Sideband at the antenna',
      options: sides,
      help: 'Found by sending tones through the mixer’s arithmetic, not by a rule.',
    }),
    tones: table({
      label: 'Tones sent through',
      help: 'Each line is a tone of the voice: what the filter lets through, what the mixer makes of it, and on which side of the suppressed carrier it comes out.',
      columns: {
        tone: hertz('Tone', 'f_t', 'Audio.', 4),
        passed: hertz('Behind the filter', 'f_p', 'The sideband that the filter lets through.'),
        added: hertz('Mixer: sum', 'f_add', 'Oscillator plus signal.'),
        subtracted: hertz('Mixer: difference', 'f_sub', 'The larger less the smaller.'),
        kept: hertz('At the antenna', 'f_k', 'The one that the band-pass lets through.'),
        beside: hertz('From the carrier', 'f_b', 'Less the suppressed carrier.', 4),
        side: choice({
          label: 'Side',
          options: sides,
          help: 'Below the suppressed carrier or above.',
        }),
      },
    }),
    image: hertz(
      'Image',
      'f_im',
      'The other frequency that the mixer brings to the filter. The receiver hears it unless the band-pass keeps it out; transmitting, it goes out beside the signal.',
    ),
    halfway: hertz(
      'Half-way point',
      'f_half',
      'Its second harmonic and the oscillator’s second make the intermediate frequency: it lies nearer than the image.',
    ),
    carrierLeft: quantity({
      label: 'Carrier leaking through',
      symbol: 'A_cl',
      unit: 'dB',
      digits: 2,
      help: 'What leaks straight through, against the wanted signal there, before the band-pass: at most, if all the intermediate frequency were carrier.',
    }),
    oscillatorLeft: quantity({
      label: 'Oscillator leaking through',
      symbol: 'A_ol',
      unit: 'dB',
      digits: 2,
      help: 'Against the wanted signal there, before the band-pass. Negative is weaker.',
    }),
  },
});
