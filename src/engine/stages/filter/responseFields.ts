import type { Ladder } from '../../circuit/ladder.ts';
import { curve, model, quantity } from '../../fields/declare.ts';
import type { FilterDesign } from './design.ts';

/** The ladder itself and the curves of its response. */
export const responseResults = {
  ladder: model<Ladder>()({
    label: 'The ladder',
    help: 'All parts as fitted, between the ends that it really has.',
  }),
  design: model<FilterDesign>()({
    label: 'The exact design',
    help: 'Before parts are chosen, between the ends designed for: the workings start from it.',
  }),
  response: curve({
    label: 'Response',
    help: 'With the parts as fitted, between the ends that it really has.',
    along: 'frequency',
    of: {
      frequency: frequency(),
      gain: quantity({
        label: 'Gain',
        symbol: 'G',
        unit: 'dB',
        digits: 3,
        help: 'Power in the load over the most the source could give.',
      }),
      delay: quantity({
        label: 'Group delay',
        symbol: 'tau',
        unit: 's',
        digits: 3,
        help: 'How late a tone’s envelope arrives.',
      }),
      returnLoss: quantity({
        label: 'Return loss',
        symbol: 'A_RL',
        unit: 'dB',
        digits: 3,
        help: 'How much of what comes in is not thrown back, at the input.',
      }),
    },
  }),
  exactResponse: curve({
    label: 'Response of the exact design',
    help: 'What the same crystals do with exact parts and the ends designed for. Only where that differs.',
    along: 'frequency',
    of: {
      frequency: frequency(),
      gain: quantity({
        label: 'Gain, exact',
        symbol: 'G_x',
        unit: 'dB',
        digits: 3,
        help: 'Power in the load over the most the source could give.',
      }),
    },
  }),
};

function frequency() {
  return quantity({
    label: 'Frequency',
    symbol: 'f',
    unit: 'Hz',
    digits: 8,
    help: 'Radio frequency.',
  });
}
