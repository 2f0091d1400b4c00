import { choice, quantity } from '../../fields/declare.ts';

/** The ways from an amplifier to a filter, in the order in which they are listed. */
export const ways = {
  straight: 'straight',
  transformer: 'transformer',
  lowpass: 'L match, coil in series',
  highpass: 'L match, capacitor in series',
  resistor: 'one resistor',
  pad: 'resistive pad',
} as const;

const by = (label: string) =>
  choice({
    label,
    options: ways,
    default: 'transformer',
    help: 'What stands between the two. All are worked below; this one goes into the response.',
  });

const is = (label: string, amplifier: string) =>
  choice({
    label,
    options: { amplifier, fifty: '50 Ω', own: 'other' },
    default: 'amplifier',
    help: 'What really stands there, before any matching.',
  });

const ohms = (label: string, symbol: string, help: string) =>
  quantity({
    label,
    symbol,
    unit: 'Ω',
    range: [1, 100e3],
    default: 50,
    typical: [20, 2000],
    digits: 3,
    help,
  });

const reactance = (symbol: string) =>
  quantity({
    label: 'In series with it',
    symbol,
    unit: 'Ω',
    range: [-50e3, 50e3],
    default: 0,
    typical: [-100, 100],
    digits: 3,
    help: 'Reactance at the filter’s frequency: positive for a coil, negative for a capacitor.',
  });

const tuned = choice({
  label: 'Its capacitance',
  options: { left: 'left as it is', out: 'tuned out by a coil across it' },
  default: 'left',
  help: 'What lies across an amplifier’s resistance spoils the match; a coil that resonates with it at the filter’s frequency takes it away.',
});

const wound = (symbol: string) =>
  quantity({
    label: 'Matched as if it were',
    symbol,
    unit: 'Ω',
    range: [1, 100e3],
    default: null,
    typical: [50, 500],
    digits: 3,
    help: 'What the matching was worked out for. Blank: for what is really there.',
  });

/** What feeds the filter, what it feeds, and what stands between. */
export const sideInputs = {
  sourceIs: is('Before the filter', 'the amplifier before it'),
  sourceOwn: ohms('Its resistance', 'R_so', 'What feeds the filter: its output resistance.'),
  sourceOwnX: reactance('X_so'),
  sourceTuned: tuned,
  sourceWound: wound('R_sw'),
  sourceBy: by('Matched by'),
  loadIs: is('Behind the filter', 'the amplifier behind it'),
  loadOwn: ohms('Its resistance', 'R_lo', 'What the filter feeds: its input resistance.'),
  loadOwnX: reactance('X_lo'),
  loadTuned: tuned,
  loadWound: wound('R_lw'),
  loadBy: by('Matched by'),
} as const;

/** An analyser with its own ports. */
export const analyserInputs = {
  port: quantity({
    label: 'Ports of the analyser',
    symbol: 'R_p',
    unit: 'Ω',
    range: [10, 1000],
    default: 50,
    digits: 3,
    help: 'Generator and receiver alike.',
  }),
  range: quantity({
    label: 'Range of the analyser',
    symbol: 'D_a',
    unit: 'dB',
    range: [20, 160],
    default: 70,
    typical: [50, 110],
    digits: 2,
    help: 'From a straight connection down to its own noise.',
    source: 'common practice, no source',
  }),
} as const;
