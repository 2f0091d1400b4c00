import { choice, declare, quantity, table, words } from '../../fields/declare.ts';
import { receiveFields } from '../receive/fields.ts';
import { strongInputs } from './inputs.ts';

const outcomes = { holds: 'holds', close: 'close', fails: 'fails' } as const;
const block = choice({
  label: 'Block',
  options: receiveFields.results.chain.columns.block.options,
  help: 'In the signal’s order.',
});

const dBm = (label: string, symbol: string, help: string) =>
  quantity({ label, symbol, unit: 'dBm', digits: 3, help });
const dB = (label: string, symbol: string, help: string) =>
  quantity({ label, symbol, unit: 'dB', digits: 3, help });

/** Strong stations: what they make of each other, and how much the receiver stands. */
export const strongFields = declare({
  key: 'strong',
  title: 'Strong stations',
  asks: 'What do strong stations do to it?',
  inputs: strongInputs,
  results: {
    verdict: choice({
      label: 'Strong stations',
      options: {
        holds: 'Do no harm',
        close: 'Are just borne',
        fails: 'Do harm',
      },
      help: 'The worst of what is reckoned here: no harm with 10 dB to spare.',
    }),
    worst: words({ label: 'The worst of it', help: 'Look here first.' }),
    interceptOutside: dBm(
      'Intercept for stations outside the passband',
      'IP_out',
      'Third order, at the antenna: all blocks up to the crystal filter.',
    ),
    interceptInside: dBm(
      'Intercept inside the passband',
      'IP_in',
      'Third order, at the antenna: all blocks up to the detector. Two stations in one channel, or the voices within one.',
    ),
    free: dB(
      'Range free of products, outside',
      'D_3',
      'Third-order dynamic range: from the receiver’s own noise to two stations that make a product as strong.',
    ),
    freeBand: dB(
      'The same over the band’s noise',
      'D_3b',
      'What counts with the antenna on: products below the band’s noise are not heard.',
    ),
    harmless: dBm(
      'Two stations that are just not heard',
      'L_ok',
      'Each, at the antenna: their product is as strong as all the noise.',
    ),
    product: dBm(
      'Product of the two stations',
      'L_3',
      'As if it came in at the antenna, beside them at their own distance.',
    ),
    productOver: dB(
      'Over the noise',
      'M_3',
      'Above zero it is heard as a station that is not there.',
    ),
    productSpared: dB(
      'Over the noise, with the attenuator',
      'M_3a',
      'With the one that does no harm: each decibel takes three off the product.',
    ),
    blocks: table({
      label: 'Whose intercept it is',
      help: 'Each block’s, and what it comes to at the antenna.',
      columns: {
        block,
        own: dBm('Input intercept', 'IP_row', 'Third order, at its own input.'),
        before: dB('Gain before it', 'G_b', 'From the antenna to its input.'),
        referred: dBm('At the antenna', 'IP_a', 'Less the gain before it.'),
        share: quantity({
          label: 'Share',
          symbol: 's_3',
          unit: '%',
          digits: 2,
          help: 'Of the product’s voltage inside the passband. Work on the largest.',
        }),
      },
    }),
    broadcaster: quantity({
      label: 'Broadcaster reckoned with',
      symbol: 'f_bc',
      unit: 'Hz',
      digits: 5,
      help: 'As typed, or the nearest place in a broadcasting band.',
    }),
    blocked: table({
      label: 'Blocking',
      help: 'The broadcaster at each block before the filter, and the level at which it takes a decibel off the weak station.',
      columns: {
        block,
        taken: dB(
          'Taken off before it',
          'A_bef',
          'By output network and band-pass, beyond what they take off the signal.',
        ),
        level: dBm('Broadcaster there', 'L_there', 'At its input.'),
        limit: dBm('Blocks from', 'L_block', 'A decibel less gain for the weak station.'),
        margin: dB('Margin', 'M_row', 'Ten and more are comfortable.'),
        outcome: choice({ label: 'Outcome', options: outcomes, help: 'Close below 10 dB.' }),
      },
    }),
    blockMargin: dB('Least margin to blocking', 'M_block', 'Of all blocks before the filter.'),
    broadcasterMost: dBm('Broadcaster that blocks', 'L_most', 'At the antenna, on that frequency.'),
    stopbandUsed: dB(
      'Filter far off, reckoned with',
      'A_far',
      'As typed, as Filter found, or as open boards have it.',
    ),
    ways: table({
      label: 'Ways past the filter',
      help: 'A station of the broadcaster’s strength, and how it is heard where it is not.',
      columns: {
        way: choice({
          label: 'Way',
          options: {
            rectified: 'Rectified in the detector',
            image: 'On the image',
            intermediate: 'On the intermediate frequency',
          },
          help: 'How it comes in.',
        }),
        frequency: quantity({
          label: 'Station on',
          symbol: 'f_w',
          unit: 'Hz',
          digits: 5,
          help: 'Where it really is.',
        }),
        network: dB('Output network', 'A_wn', 'Takes off, beyond the signal’s own loss.'),
        bandPass: dB('Band-pass', 'A_wb', 'Takes off, beyond the signal’s own loss.'),
        last: dB('Mixer, filter, detector', 'A_wl', 'Balance and stopband.'),
        heard: dBm('Heard like', 'L_w', 'A station of this strength on the channel.'),
        over: dB('Over the noise', 'M_w', 'Above zero it is heard.'),
        outcome: choice({
          label: 'Outcome',
          options: outcomes,
          help: 'Close within 10 dB of the noise.',
        }),
      },
    }),
  },
});
