import { count, quantity, table, words } from '../../fields/declare.ts';

/** The crystals from the bag that stand in the filter. */
export const placeResults = {
  places: table({
    label: 'The crystals in place',
    help: 'From source to load, with what was measured of each; what was not is that of Quartz.',
    columns: {
      position: count({ label: 'Place', help: 'Counted from the source.' }),
      label: words({ label: 'Label', help: 'As in the bag.' }),
      fs: quantity({
        label: 'Series resonance',
        symbol: 'f_s_i',
        unit: 'Hz',
        digits: 8,
        help: 'As measured.',
      }),
      off: quantity({
        label: 'From their mean',
        symbol: 'df_s',
        unit: 'Hz',
        digits: 3,
        help: 'A tenth of the filter’s width is hardly seen, a fifth costs a decibel of ripple.',
      }),
      lm: quantity({
        label: 'Lm',
        symbol: 'L_m_i',
        unit: 'H',
        digits: 4,
        help: 'Motional inductance.',
      }),
      rm: quantity({
        label: 'Rm',
        symbol: 'R_m_i',
        unit: 'Ω',
        digits: 3,
        help: 'Motional resistance.',
      }),
      c0: quantity({
        label: 'C0',
        symbol: 'C_0_i',
        unit: 'F',
        digits: 3,
        help: 'Holder capacitance.',
      }),
    },
  }),
  alignedAt: quantity({
    label: 'Meshes aligned at',
    symbol: 'f_all',
    unit: 'Hz',
    digits: 8,
    help: 'The highest that any mesh resonates by itself: the others are brought up to it. Only where each has its own capacitor.',
  }),
};
