import { quantity, table, words } from '../../fields/declare.ts';
import type { Unit } from '../../quantity/units.ts';

const figure = <const U extends Unit>(
  unit: U,
  label: string,
  symbol: string,
  digits: number,
  help: string,
) => quantity({ label, symbol, unit, digits, help });

/** The crystal, as the readings have it. */
const crystal = {
  fs: figure('Hz', 'Series resonance', 'f_s', 8, 'Where Lm and Cm cancel.'),
  lm: figure('H', 'Motional inductance', 'L_m', 4, 'It sets the filter’s impedance.'),
  cm: figure('F', 'Motional capacitance', 'C_m', 4, 'It sets the width that a filter can have.'),
  rm: figure('Ω', 'Motional resistance', 'R_m', 3, 'Loss. Only a level can show it.'),
  qu: figure('1', 'Unloaded Q', 'Q_u', 3, 'Reactance of Lm over Rm.'),
  c0: figure('F', 'Holder capacitance', 'C_0', 3, 'The reading less what the meter shows without.'),
  fp: figure('Hz', 'Parallel resonance', 'f_p', 8, 'Where the holder ends the inductive range.'),
} as const;

/** What the circuit of the readings was. */
const circuit = {
  end: figure('Ω', 'Resistance at either end', 'R_T', 3, 'Of the jig in use.'),
  shunt: figure('F', 'Across the motional arm', 'C_h', 3, 'Holder and jig, as they lay there.'),
  oscillator: figure('F', 'The oscillator’s own capacitance', 'C_L', 3, 'What the crystal sees.'),
} as const;

/** Standard figures of doubt. */
const doubt = {
  fsError: figure('Hz', 'Series resonance, ±', 'u_fs', 2, 'Root of the sum of squares.'),
  lmError: figure('H', 'Motional inductance, ±', 'u_Lm', 2, 'Root of the sum of squares.'),
  cmError: figure('F', 'Motional capacitance, ±', 'u_Cm', 2, 'Root of the sum of squares.'),
  rmError: figure('Ω', 'Motional resistance, ±', 'u_Rm', 2, 'Root of the sum of squares.'),
  quError: figure('1', 'Unloaded Q, ±', 'u_Qu', 2, 'Root of the sum of squares.'),
  c0Error: figure('F', 'Holder capacitance, ±', 'u_C0', 2, 'Of the meter.'),
} as const;

/** What the usual first-order formula says, and how far it is off. */
const short = {
  fsShort: figure('Hz', 'Series resonance, shortcut', 'f_sq', 8, 'The reading taken as it is.'),
  lmShort: figure('H', 'Motional inductance, shortcut', 'L_mq', 4, 'By the first-order formula.'),
  cmShort: figure('F', 'Motional capacitance, shortcut', 'C_mq', 4, 'By the first-order formula.'),
  rmShort: figure('Ω', 'Motional resistance, shortcut', 'R_mq', 3, 'By the first-order formula.'),
  fsOff: figure('Hz', 'Shortcut off in fs by', 'd_fs', 3, 'Above zero: it reads too high.'),
  lmOff: figure('%', 'Shortcut off in Lm by', 'd_Lm', 2, 'Above zero: it reads too high.'),
  cmOff: figure('%', 'Shortcut off in Cm by', 'd_Cm', 2, 'Above zero: it reads too high.'),
  rmOff: figure('%', 'Shortcut off in Rm by', 'd_Rm', 2, 'Above zero: it reads too high.'),
} as const;

export const measureResults = {
  ...crystal,
  ...circuit,
  ...doubt,
  ...short,
  doubts: table({
    label: 'What each reading’s error does',
    help: 'Half of the difference between the crystal worked with the reading so much higher and so much lower. A dash: nothing that matters.',
    columns: {
      reading: words({ label: 'Reading', help: 'What was read.' }),
      error: words({ label: '±', help: 'How far it may be off.' }),
      fs: figure('Hz', 'fs', 'd_f', 2, 'Change of the series resonance.'),
      lm: figure('H', 'Lm', 'd_L', 2, 'Change of the motional inductance.'),
      cm: figure('F', 'Cm', 'd_C', 2, 'Change of the motional capacitance.'),
      rm: figure('Ω', 'Rm', 'd_R', 2, 'Change of the motional resistance.'),
      qu: figure('1', 'Qu', 'd_Q', 2, 'Change of the unloaded Q.'),
    },
  }),
  weakest: words({
    label: 'Where most of the doubt comes from',
    help: 'The reading that is worth taking again, or with a better instrument.',
  }),
} as const;
