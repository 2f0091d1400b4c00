import { quantity } from '../../fields/declare.ts';

/** The exact design: what everything follows from. */
export const designResults = {
  ends: quantity({
    label: 'End resistance',
    symbol: 'R_end',
    unit: 'Ω',
    digits: 3,
    help: 'What the filter wants to see at its source, and in symmetrical families at its load as well. Wrong ends are the commonest fault of all.',
  }),
  halfSpan: quantity({
    label: 'Half the reactance span',
    symbol: 'h',
    unit: 'Ω',
    digits: 4,
    help: 'The crystal’s reactance rises by twice this over the passband; every part follows from it.',
  }),
  largestSum: quantity({
    label: 'Largest sum of couplings',
    symbol: 'a',
    unit: '1',
    digits: 4,
    help: 'The couplings on both sides of a crystal added up. Where it is largest no aligning capacitor is needed.',
  }),
  endQ: quantity({
    label: 'End Q, normalised',
    symbol: 'q',
    unit: '1',
    digits: 4,
    help: 'How strongly the ends load the first and last crystal.',
  }),
  alignment: quantity({
    label: 'Mesh or node frequency',
    symbol: 'f_mesh',
    unit: 'Hz',
    digits: 8,
    help: 'Where each mesh resonates with its neighbours held open: the middle of the passband by reactance.',
  }),
  crystalFs: quantity({
    label: 'Designed for crystals of',
    symbol: 'f_s',
    unit: 'Hz',
    digits: 7,
    help: 'Series resonance: that of Quartz, or the mean of the crystals chosen from the bag.',
  }),
  crystalLm: quantity({
    label: 'and a motional inductance of',
    symbol: 'L_m',
    unit: 'H',
    digits: 4,
    help: 'That of Quartz, or the mean of the crystals chosen from the bag.',
  }),
  crystalRm: quantity({
    label: 'a motional resistance of',
    symbol: 'R_m',
    unit: 'Ω',
    digits: 3,
    help: 'That of Quartz, or the mean of the crystals chosen from the bag.',
  }),
  crystalC0: quantity({
    label: 'a holder capacitance of',
    symbol: 'C_0',
    unit: 'F',
    digits: 3,
    help: 'That of Quartz, or the mean of the crystals chosen from the bag.',
  }),
};
