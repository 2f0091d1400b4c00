import { choice, declare, quantity } from '../../fields/declare.ts';
import { hearInputs } from './inputs.ts';

/** What becomes of a voice between one microphone and another ear. */
export const hearFields = declare({
  key: 'hear',
  title: 'Hear it',
  asks: 'What does it sound like at the other end?',
  inputs: hearInputs,
  results: {
    ratioUsed: quantity({
      label: 'Signal over noise',
      symbol: 'SNR_h',
      unit: 'dB',
      digits: 3,
      help: 'Peak envelope power over the mean noise in the filter’s noise bandwidth. Blank where there is none.',
    }),
    meanRatio: quantity({
      label: 'Speech’s mean over noise',
      symbol: 'SNR_m',
      unit: 'dB',
      digits: 3,
      help: 'Speech reaches its peak for moments only: on the mean it is so much nearer to the noise.',
    }),
    fadingUsed: choice({
      label: 'Fading that is heard',
      options: { none: 'None', quiet: 'Slow', moderate: 'Middling', disturbed: 'Quick' },
      help: 'As chosen, or as the kind of path has it.',
    }),
    toneAs: quantity({
      label: 'A tone of 1 kHz comes out as',
      symbol: 'f_1k',
      unit: 'Hz',
      digits: 4,
      help: 'Off tune, every tone moves by the same number of hertz: voices get gruff, or thin.',
    }),
  },
});
