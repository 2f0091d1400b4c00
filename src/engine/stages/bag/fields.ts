import { choice, count, declare, pasted, quantity, table, words } from '../../fields/declare.ts';

const f = <const S extends string>(symbol: S, label: string, help: string) =>
  quantity({ label, symbol, unit: 'Hz', digits: 8, help });
const span = <const S extends string>(symbol: S, label: string, help: string) =>
  quantity({ label, symbol, unit: 'Hz', digits: 3, help });
const lm = quantity({
  label: 'Lm',
  symbol: 'L_m',
  unit: 'H',
  digits: 4,
  help: 'Motional inductance, where it was measured.',
});
const rm = quantity({
  label: 'Rm',
  symbol: 'R_m',
  unit: 'Ω',
  digits: 3,
  help: 'Motional resistance, where it was measured.',
});
const c0 = quantity({
  label: 'C0',
  symbol: 'C_0',
  unit: 'F',
  digits: 3,
  help: 'Holder capacitance, where it was measured.',
});

/** The bag of crystals as measured one by one, and what the lot is like. */
export const bagFields = declare({
  key: 'bag',
  title: 'Bag',
  asks: 'Which crystals are in the bag, and which of them belong together?',
  inputs: {
    crystals: pasted({
      label: 'The crystals, one a line',
      longest: 20_000,
      help: 'Label, series resonance, and if measured Lm, Rm and C0: from a spreadsheet, a CSV file or a counter’s log. One frequency a line will do. A heading may say which column is what, and its unit. Up to 200 lines.',
    }),
    set: count({
      label: 'Crystals of a set',
      symbol: 'n_set',
      range: [2, 16],
      default: null,
      help: 'How many must match. Blank: as many as the filter has.',
    }),
    window: quantity({
      label: 'Within',
      symbol: 'W_set',
      unit: 'Hz',
      range: [1, 10_000],
      default: null,
      digits: 3,
      help: 'How far apart the lowest and the highest of the set may lie. Blank: a tenth of the filter’s bandwidth, which costs hardly any ripple.',
      source: 'common practice, no source',
    }),
    lotSpread: quantity({
      label: 'Spread of the lot, if it is not measured yet',
      symbol: 'sigma_lot',
      unit: 'Hz',
      range: [1, 10_000],
      default: null,
      typical: [60, 300],
      digits: 3,
      help: 'Standard deviation. Blank: the spread of the bag itself; without a bag, 15 ppm of the frequency.',
      source: 'common practice, no source',
    }),
    confidence: quantity({
      label: 'How sure',
      symbol: 'P_set',
      unit: '%',
      range: [0.5, 0.999],
      default: 0.9,
      digits: 3,
      help: 'How likely the set should be found in what is bought.',
    }),
    seed: count({
      label: 'Seed',
      symbol: 'n_seed',
      range: [0, 999_999],
      default: 1,
      help: 'The same seed draws the same lots and starts the same search; another seed shows how much is chance.',
    }),
  },
  results: {
    rows: table({
      label: 'The bag',
      help: 'Every line of the list, also those that were not understood.',
      columns: {
        line: count({ label: 'Line', help: 'In the list as pasted.' }),
        label: words({
          label: 'Label',
          help: 'As written on the can; counted where there is none.',
        }),
        fs: f('f_s', 'Series resonance', 'As measured.'),
        off: span('df_s', 'From the median', 'Above the middle of the lot, or below.'),
        lm,
        rm,
        c0,
        standing: choice({
          label: 'Counts',
          options: { counts: 'yes', aside: 'no' },
          help: 'Lines without a frequency, and crystals of another kind, are set aside.',
        }),
        note: words({ label: 'Note', help: 'What is to be said of the line.' }),
      },
    }),
    number: count({
      label: 'Crystals that count',
      symbol: 'N_bag',
      help: 'Lines with a frequency, crystals of another kind left out.',
    }),
    aside: count({
      label: 'Set aside',
      symbol: 'N_aside',
      help: 'Lines without a frequency, or with one that is far from all others.',
    }),
    fs: f('f_med', 'Median series resonance', 'As many crystals lie above it as below.'),
    lowest: f('f_low', 'Lowest', 'The lowest series resonance of the lot.'),
    highest: f('f_high', 'Highest', 'The highest series resonance of the lot.'),
    range: span('R_f', 'Range', 'From the lowest to the highest.'),
    spread: span(
      'sigma_f',
      'Spread',
      'Standard deviation of the series resonances. Lots of low-cost crystals have 60 to 300 Hz.',
    ),
    lm: quantity({ ...lm, label: 'Median Lm', help: 'Of those that were measured.' }),
    rm: quantity({ ...rm, label: 'Median Rm', help: 'Of those that were measured.' }),
    c0: quantity({ ...c0, label: 'Median C0', help: 'Of those that were measured.' }),
    sets: table({
      label: 'The closest sets',
      help: 'For each number of crystals the neighbours that lie closest together.',
      columns: {
        crystals: count({ label: 'Crystals', help: 'In the set.' }),
        within: span('W_n', 'Lie within', 'From the lowest to the highest of them.'),
        from: words({ label: 'From', help: 'Label of the lowest.' }),
        to: words({ label: 'To', help: 'Label of the highest.' }),
        low: f('f_1', 'Lowest', 'The lowest of the set.'),
        high: f('f_n', 'Highest', 'The highest of the set.'),
      },
    }),
    humps: choice({
      label: 'The lot has',
      options: {
        one: 'one hump',
        two: 'two humps',
        few: 'too few to tell',
      },
      help: 'Of a lot from which the good ones were taken two humps are left. One standard deviation then says little.',
      source: 'Engelman and Hartigan, 1969, and a plain rule for the valley',
    }),
    lowerHump: f(
      'f_lower',
      'Middle of the lower part',
      'The lot divided in two where that explains most of its spread.',
    ),
    upperHump: f(
      'f_upper',
      'Middle of the upper part',
      'The lot divided in two where that explains most of its spread.',
    ),
    clusters: quantity({
      label: 'Evidence of two humps',
      symbol: 'T_2',
      unit: '1',
      digits: 3,
      help: 'Logarithm of the lot’s variance over that within its two parts: 1.01 for a large normal lot.',
    }),
  },
});
