import { choice, declare, quantity, table } from '../../fields/declare.ts';
import { feedInputs, lineKinds } from './inputs.ts';

const decibels = (label: string, symbol: string, help: string) =>
  quantity({ label, symbol, unit: 'dB', digits: 4, help });

const plain = (label: string, symbol: string, help: string) =>
  quantity({ label, symbol, unit: '1', digits: 3, help });

/** The line between rig and antenna: what it takes of the power. */
export const feedFields = declare({
  key: 'feed',
  title: 'Feed line',
  asks: 'What does the line to the antenna take?',
  inputs: feedInputs,
  results: {
    swrUsed: plain(
      'SWR reckoned with',
      'S_u',
      'At the antenna: as typed, or by the antenna’s resistance.',
    ),
    matched: decibels(
      'Loss if matched',
      'A_0',
      'Of this length at this frequency, with no standing wave.',
    ),
    added: decibels(
      'Added by the standing wave',
      'A_w',
      'What goes to and fro is lost more than once.',
    ),
    loss: decibels('Loss of the line', 'A_l', 'As typed, or with what the standing wave adds.'),
    swrRig: plain(
      'SWR at the rig',
      'S_r',
      'The line’s loss hides the antenna’s: a good SWR at the rig may be a bad line.',
    ),
    farSwrUsed: plain('SWR reckoned with there', 'S_v', 'At the other antenna.'),
    farMatched: decibels('Loss there if matched', 'A_1', 'With no standing wave.'),
    farLoss: decibels(
      'Loss of the line there',
      'A_f',
      'As typed, or with what the standing wave adds.',
    ),
    kinds: table({
      label: 'The same length of other lines',
      help: 'To this antenna, at this frequency, dry and new.',
      columns: {
        line: choice({ label: 'Line', options: lineKinds, help: 'Kind of line.' }),
        swr: plain(
          'SWR at the antenna',
          'S_k',
          'As typed, or by the antenna’s resistance and this line’s. Not known where the one typed belongs to a line of another impedance.',
        ),
        matched: decibels('If matched', 'A_k', 'Loss with no standing wave.'),
        total: decibels('In all', 'A_t', 'With the standing wave.'),
        share: quantity({
          label: 'Gets through',
          symbol: 'eta_k',
          unit: '%',
          digits: 2,
          help: 'Share of the power that comes to the antenna.',
        }),
      },
    }),
  },
});
