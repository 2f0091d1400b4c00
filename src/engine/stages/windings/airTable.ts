import { quantity, table, words } from '../../fields/declare.ts';

/** Every coil as it would be without a core. */
export const airCoils = table({
  label: 'As air-core coils',
  help: 'On a former or free-standing, for whoever has no core, or more power than cores like. They are large, and couple with each other: set them at right angles.',
  columns: {
    label: words({ label: 'Coil', help: 'Its name in the circuit.' }),
    l: quantity({ label: 'Wanted', symbol: 'L', unit: 'H', digits: 4, help: 'Inductance.' }),
    turns: quantity({
      label: 'Turns',
      symbol: 'N_a',
      unit: '1',
      digits: 3,
      help: 'Parts of a turn count: the ends need not lie on one side.',
    }),
    length: quantity({
      label: 'Length of the winding',
      symbol: 'l_a',
      unit: 'm',
      digits: 3,
      help: 'At the spacing chosen.',
    }),
    lorenz: quantity({
      label: 'By Lorenz',
      symbol: 'L_z',
      unit: 'H',
      digits: 4,
      help: 'The exact current sheet, what Nagaoka’s table holds.',
    }),
    wheeler: quantity({
      label: 'By Wheeler',
      symbol: 'L_wh',
      unit: 'H',
      digits: 4,
      help: 'The rule that fits on a card: within 1 % for coils that are not too short.',
    }),
    wire: quantity({
      label: 'Wire to cut',
      symbol: 'l_aw',
      unit: 'm',
      digits: 2,
      help: 'Tails included.',
    }),
    resistance: quantity({
      label: 'Resistance at the operating frequency',
      symbol: 'R_a',
      unit: 'Ω',
      digits: 2,
      help: 'With skin effect and neighbouring turns.',
    }),
    q: quantity({
      label: 'Q, estimated',
      symbol: 'Q_a',
      unit: '1',
      digits: 2,
      help: 'Of the wire alone: a box near it costs some.',
    }),
    selfCapacitance: quantity({
      label: 'Self-capacitance',
      symbol: 'C_a',
      unit: 'F',
      digits: 2,
      help: 'About half a picofarad for each centimetre of diameter, more where it is long.',
    }),
    resonance: quantity({
      label: 'Self-resonance',
      symbol: 'f_a',
      unit: 'Hz',
      digits: 2,
      help: 'Keep well below it.',
    }),
    build: words({ label: 'To wind', help: 'In one line.' }),
  },
});
