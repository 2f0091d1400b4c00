import { count, quantity } from '../../fields/declare.ts';

/** What depends on the family and on where the crystals stand. */
export const formResults = {
  crystalsNeeded: count({
    label: 'Crystals needed',
    symbol: 'n_all',
    help: 'Two more than positions where the ends are doubled.',
  }),
  endsLoad: quantity({
    label: 'End resistance at the load',
    symbol: 'R_endL',
    unit: 'Ω',
    digits: 3,
    help: 'The same as at the source in symmetrical families. Bessel, linear phase and Gaussian want a somewhat different one; the filter may be turned round.',
  }),
  endQLoad: quantity({
    label: 'End Q at the load',
    symbol: 'q_L',
    unit: '1',
    digits: 4,
    help: 'How strongly the load acts on the last crystal.',
  }),
  halfSusceptance: quantity({
    label: 'Half the susceptance span',
    symbol: 'h_B',
    unit: 'S',
    digits: 4,
    help: 'With crystals to ground: the crystal’s susceptance rises by twice this over the passband; every part follows from it.',
  }),
  acrossFitted: quantity({
    label: 'Across each crystal',
    symbol: 'C_ac',
    unit: 'F',
    digits: 3,
    help: 'With crystals to ground: what lies across every one of them alike. It is part of the capacitors in the table.',
  }),
  farOff: quantity({
    label: 'Ten widths away',
    symbol: 'A_far',
    unit: 'dB',
    digits: 1,
    help: 'Below the best point, on the worse side. With crystals to ground a chain of capacitors is all that stops what is far away.',
  }),
};
