import { choice, quantity } from '../../fields/declare.ts';

const counted = (label: string, symbol: string, help: string) =>
  quantity({
    label,
    symbol,
    unit: 'Hz',
    range: [1e6, 40e6],
    default: null,
    digits: 8,
    help,
    reading: true,
  });

const capacitor = (label: string, symbol: string, help: string) =>
  quantity({
    label,
    symbol,
    unit: 'F',
    range: [1e-12, 2e-9],
    default: null,
    typical: [10e-12, 100e-12],
    digits: 3,
    help,
    reading: true,
  });

/** Two frequencies of one oscillator, and its own capacitance. */
export const shiftInputs = {
  firstWith: choice({
    label: 'First reading',
    options: { direct: 'crystal straight in the oscillator', series: 'through a capacitor' },
    default: 'direct',
    help: 'The second is always taken through a smaller capacitor.',
  }),
  firstSeries: capacitor(
    'Series capacitor, first reading',
    'C_s1',
    'As measured, not as printed: its error goes straight into Lm.',
  ),
  first: counted('First frequency', 'f_1', 'Counter at the oscillator’s buffer, after warming up.'),
  secondSeries: capacitor(
    'Series capacitor, second reading',
    'C_s2',
    'As measured. 22 to 33 pF shift a 9 MHz crystal by two to four kilohertz.',
  ),
  second: counted('Second frequency', 'f_2', 'The same crystal, not touched in between.'),
  oscillatorBy: choice({
    label: 'The oscillator’s own capacitance',
    options: {
      typed: 'known',
      feedback: 'from its feedback capacitors',
      third: 'from a third reading',
    },
    default: 'feedback',
    help: 'What the crystal sees of the oscillator. Left out, Cm comes out 15 to 19 % low with 110 pF.',
  }),
  oscillatorOwn: quantity({
    label: 'Known capacitance',
    symbol: 'C_own',
    unit: 'F',
    range: [1e-12, 3e-9],
    default: null,
    typical: [30e-12, 300e-12],
    digits: 3,
    help: 'Once found with one crystal it is good for all that follow in the same oscillator.',
    reading: true,
  }),
  feedbackUpper: quantity({
    label: 'Feedback capacitor, base to emitter',
    symbol: 'C_fa',
    unit: 'F',
    range: [5e-12, 10e-9],
    default: 220e-12,
    typical: [47e-12, 1e-9],
    digits: 3,
    help: 'The two feedback capacitors lie in series across the crystal.',
  }),
  feedbackLower: quantity({
    label: 'Feedback capacitor, emitter to ground',
    symbol: 'C_fb',
    unit: 'F',
    range: [5e-12, 10e-9],
    default: 220e-12,
    typical: [47e-12, 1e-9],
    digits: 3,
    help: 'The two feedback capacitors lie in series across the crystal.',
  }),
  oscillatorStray: quantity({
    label: 'Transistor and wiring',
    symbol: 'C_y',
    unit: 'F',
    range: [0, 100e-12],
    default: 5e-12,
    typical: [2e-12, 12e-12],
    digits: 2,
    help: 'From the crystal’s hot pin to ground, beside the feedback capacitors.',
    source: 'common practice, no source',
  }),
  across: capacitor(
    'Capacitor across the oscillator',
    'C_x',
    'Soldered across the terminals where the crystal (with its series capacitor, if any) goes in: as large as the oscillator bears, as measured.',
  ),
  third: counted(
    'Third frequency',
    'f_3',
    'As the first reading, with that capacitor across the oscillator: a little lower.',
  ),
} as const;
