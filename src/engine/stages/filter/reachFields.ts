import { choice, quantity } from '../../fields/declare.ts';

/** How wide these crystals can be made, and what their loss leaves of the family. */
export const reachResults = {
  reach: quantity({
    label: 'Greatest bandwidth',
    symbol: 'B_max',
    unit: 'Hz',
    digits: 4,
    help: 'The widest these crystals can be made in this family, losses included: beyond, the holder takes over.',
  }),
  reachLossless: quantity({
    label: 'Greatest bandwidth without loss',
    symbol: 'B_ideal',
    unit: 'Hz',
    digits: 4,
    help: 'The same for crystals without loss. Two crystals have no such limit.',
  }),
  qRatio: quantity({
    label: 'Q to spare',
    symbol: 'Q_ratio',
    unit: '1',
    digits: 3,
    help: 'Unloaded Q over frequency by width: 20 is comfortable, 10 usable, under 7 poor.',
  }),
  rounding: quantity({
    label: 'Corners rounded by',
    symbol: 'A_round',
    unit: 'dB',
    digits: 3,
    help: 'How much lower than in the family itself the response is four fifths of the way to its edges.',
  }),
  corners: choice({
    label: 'Corners of the family',
    options: {
      holds: 'kept',
      close: 'softened by loss',
      fails: 'lost: the crystals’ Q is too low for this family',
    },
    help: 'Up to 1.25 dB of rounding the family is kept; past 2.5 dB it is another filter.',
  }),
};
