import { choice, count, quantity, table, words } from '../../fields/declare.ts';

/** The parts, and what fitting them costs. */
export const partResults = {
  couplings: table({
    label: 'Coupling capacitors',
    help: 'From each junction to ground; with crystals to ground, from each node to the next.',
    columns: {
      junction: count({ label: 'Junction', help: 'Between this crystal and the next.' }),
      k: quantity({
        label: 'Coupling',
        symbol: 'k',
        unit: '1',
        digits: 4,
        help: 'Normalised to the −3 dB width.',
      }),
      exact: quantity({
        label: 'Exact',
        symbol: 'C_k',
        unit: 'F',
        digits: 4,
        help: 'To be fitted, stray already taken off.',
      }),
      nearest: quantity({
        label: 'Nearest',
        symbol: 'C_near',
        unit: 'F',
        digits: 4,
        help: 'What comes nearest to the exact value by itself.',
      }),
      fitted: quantity({
        label: 'Fitted',
        symbol: 'C_fit',
        unit: 'F',
        digits: 4,
        help: 'What the figures on this sheet are worked with.',
      }),
      parts: words({ label: 'Parts', help: 'One, or two in parallel.' }),
      off: quantity({ label: 'Off by', unit: '%', digits: 2, help: 'Fitted against exact.' }),
    },
  }),
  meshes: table({
    label: 'Aligning capacitors',
    help: 'In series with each crystal whose mesh would resonate too low without it; with crystals to ground, across those whose node would resonate too high.',
    columns: {
      mesh: count({ label: 'Crystal', help: 'Counted from the source.' }),
      sum: quantity({
        label: 'Sum of couplings',
        symbol: 'a_i',
        unit: '1',
        digits: 4,
        help: 'On the two sides of the crystal.',
      }),
      exact: quantity({
        label: 'Exact',
        symbol: 'C_s',
        unit: 'F',
        digits: 4,
        help: 'Blank where none is needed.',
      }),
      nearest: quantity({
        label: 'Nearest',
        symbol: 'C_near',
        unit: 'F',
        digits: 4,
        help: 'What comes nearest to the exact value by itself.',
      }),
      fitted: quantity({
        label: 'Fitted',
        symbol: 'C_fit',
        unit: 'F',
        digits: 4,
        help: 'What the figures on this sheet are worked with.',
      }),
      parts: words({ label: 'Parts', help: 'One, or two in parallel.' }),
      off: quantity({ label: 'Off by', unit: '%', digits: 2, help: 'Fitted against exact.' }),
    },
  }),
  widthCost: quantity({
    label: 'Fitting costs, width',
    symbol: 'dB_3',
    unit: 'Hz',
    digits: 3,
    help: 'Width with the parts and ends as they are, against the exact design.',
  }),
  rippleCost: quantity({
    label: 'Fitting costs, ripple',
    symbol: 'dA_rip',
    unit: 'dB',
    digits: 4,
    help: 'Ripple with the parts and ends as they are, against the exact design.',
  }),
  lossCost: quantity({
    label: 'Fitting costs, loss',
    symbol: 'dA_best',
    unit: 'dB',
    digits: 4,
    help: 'Loss with the parts and ends as they are, against the exact design.',
  }),
  fits: table({
    label: 'What the parts cost',
    help: 'The same filter four times: as designed, with the crystals and ends that it has, with each capacitor rounded by itself, and with all chosen together.',
    columns: {
      way: choice({
        label: 'With',
        options: {
          design: 'exact design, alike crystals, right ends',
          exact: 'exact values, crystals and ends as they are',
          nearest: 'each value rounded by itself',
          chosen: 'values chosen together',
        },
        help: 'Leakage is left out in all of them: no capacitor changes it.',
      }),
      departure: quantity({
        label: 'Departs by',
        symbol: 'D',
        unit: 'dB',
        digits: 4,
        help: 'Root of the mean square difference from the exact design’s gain at 41 frequencies: 25 from edge to edge, and eight on each skirt that count a tenth each. Below 60 dB down nothing counts.',
      }),
      width: quantity({
        label: 'Width',
        symbol: 'B_3',
        unit: 'Hz',
        digits: 4,
        help: 'At −3 dB.',
      }),
      ripple: quantity({
        label: 'Ripple',
        symbol: 'A_rip',
        unit: 'dB',
        digits: 4,
        help: 'Of this one.',
      }),
      loss: quantity({
        label: 'Loss',
        symbol: 'A_best',
        unit: 'dB',
        digits: 4,
        help: 'Of this one.',
      }),
    },
  }),
  stock: table({
    label: 'What is used up',
    help: 'The capacitors that were listed, and how many this filter takes of them.',
    columns: {
      value: quantity({ label: 'Value', symbol: 'C', unit: 'F', digits: 4, help: 'As listed.' }),
      owned: count({ label: 'Owned', symbol: 'n_own', help: 'As listed.' }),
      used: count({ label: 'Used', symbol: 'n_used', help: 'In this filter.' }),
      left: count({ label: 'Left', symbol: 'n_left', help: 'For the next one.' }),
    },
  }),
};
