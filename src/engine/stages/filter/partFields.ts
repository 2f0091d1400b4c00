import { count, quantity, table, words } from '../../fields/declare.ts';

/** The parts, and what fitting them costs. */
export const partResults = {
  couplings: table({
    label: 'Coupling capacitors',
    help: 'From each junction to ground.',
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
    label: 'Series capacitors',
    help: 'One in each mesh that would resonate too low without it.',
    columns: {
      mesh: count({ label: 'Mesh', help: 'Counted from the source.' }),
      sum: quantity({
        label: 'Sum of couplings',
        symbol: 'a_i',
        unit: '1',
        digits: 4,
        help: 'Of the two sides of the mesh.',
      }),
      exact: quantity({
        label: 'Exact',
        symbol: 'C_s',
        unit: 'F',
        digits: 4,
        help: 'Blank where none is needed.',
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
};
