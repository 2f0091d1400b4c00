import { choice, curve, declare, quantity, table, words } from '../../fields/declare.ts';
import { speechInputs } from './inputs.ts';

const index = (label: string, symbol: string, help: string) =>
  quantity({ label, symbol, unit: '1', digits: 2, help });

/** How much of what carries meaning gets through. */
export const speechFields = declare({
  key: 'speech',
  title: 'Speech understood',
  asks: 'How much of what carries meaning gets through?',
  inputs: speechInputs,
  results: {
    index: index(
      'Speech intelligibility index',
      'SII',
      'From 0 to 1: how much of what carries meaning in speech stands over the noise. A planning figure.',
    ),
    best: index(
      'The most that gets through',
      'SII_0',
      'With 40 dB over the noise, where hardly any is heard. 300 Hz to 2.7 kHz bring some 0.7.',
    ),
    share: quantity({
      label: 'Left of it in the noise',
      symbol: 's_SII',
      unit: '%',
      digits: 2,
      help: 'The index against the most.',
    }),
    grade: choice({
      label: 'Grade',
      options: { good: 'good', fair: 'fair', poor: 'poor' },
      help: 'Good above 0.75, poor below 0.45: in between every sentence comes over, not every name.',
      source: 'ANSI S3.5-1997, thresholds from memory',
    }),
    edges: table({
      label: 'What an edge is worth',
      help: 'The same link with one edge of the filter moved outwards. Power stays, so it is spread thinner; the noise comes in through the wider gap.',
      columns: {
        filter: words({ label: 'Filter', help: 'As it is, or with one edge moved.' }),
        index: index('Index', 'SII_i', 'With the noise of the path.'),
        gain: quantity({
          label: 'Gained',
          symbol: 'G_SII',
          unit: '%',
          digits: 2,
          help: 'Of all that carries meaning, against the filter as it is.',
        }),
        best: index('At most', 'SII_i0', 'With 40 dB over the noise.'),
      },
    }),
    bands: table({
      label: 'By bands',
      help: 'Eighteen bands of a third of an octave: what each is worth, and how much of it is heard.',
      source: 'ANSI S3.5-1997',
      columns: {
        middle: quantity({
          label: 'Band',
          symbol: 'f_i',
          unit: 'Hz',
          digits: 3,
          help: 'Its nominal middle.',
        }),
        importance: quantity({
          label: 'Worth',
          symbol: 'I_i',
          unit: '%',
          digits: 3,
          help: 'Of all that carries meaning.',
        }),
        width: quantity({
          label: 'Width',
          symbol: 'B_i',
          unit: 'Hz',
          digits: 3,
          help: 'From edge to edge.',
        }),
        heard: quantity({
          label: 'Heard of it',
          symbol: 'B_h',
          unit: 'Hz',
          digits: 3,
          help: 'Each hertz counts by how far speech stands over the noise there: wholly from 15 dB on, not at all from −15 dB down.',
        }),
        audible: quantity({
          label: 'Audible',
          symbol: 'A_i',
          unit: '%',
          digits: 2,
          help: 'Part of the band that is heard.',
        }),
        brings: index('Brings', 'S_i', 'Of the index.'),
      },
    }),
    overNoise: curve({
      label: 'Index over signal to noise',
      help: 'For the filter as it is, and with one edge moved outwards.',
      along: 'ratio',
      of: {
        ratio: quantity({
          label: 'Signal over noise',
          symbol: 'SNR',
          unit: 'dB',
          digits: 3,
          help: 'Peak envelope power, in the filter’s noise bandwidth.',
        }),
        asIs: index('As it is', 'SII', 'The present filter.'),
        lower: index('Lower edge moved', 'SII_l', 'More lows.'),
        higher: index('Upper edge moved', 'SII_h', 'More highs.'),
      },
    }),
  },
});
