import { choice, count, declare, quantity, table, words } from '../../fields/declare.ts';

const yesNo = { yes: 'yes', no: 'no' } as const;

/** Which networks are looked through for the simplest that keeps the rule. */
export const suggestFields = declare({
  key: 'suggest',
  title: 'Which network',
  asks: 'Which is the simplest network that keeps the rule?',
  inputs: {
    prefer: choice({
      label: 'Best is what has',
      options: { parts: 'the fewest parts', coils: 'the fewest windings', loss: 'the least loss' },
      default: 'parts',
      help: 'Where two are equal in that, the next decides: parts, windings, loss, margin.',
    }),
    mostParts: count({
      label: 'Most parts',
      symbol: 'n_most',
      range: [1, 25],
      default: 9,
      help: 'Capacitors, coils and the transformer, each counted as one.',
    }),
    matchBy: choice({
      label: 'Collector load made by',
      options: {
        any: 'whatever is best',
        transformer: 'a transformer',
        pi: 'a pi match: no core for a transformer at hand',
      },
      default: 'any',
      help: 'Where the antenna is about the load wanted, nothing at all may do, too.',
    }),
    halfWave: choice({
      label: 'Half-wave sections',
      options: yesNo,
      default: 'yes',
      help: 'Equal coils and equal capacitors: the easiest to wind.',
    }),
    prototypes: choice({
      label: 'Butterworth and Chebyshev',
      options: yesNo,
      default: 'yes',
      help: 'Of three to nine elements.',
    }),
    traps: choice({
      label: 'Traps',
      options: yesNo,
      default: 'yes',
      help: 'A capacitor across a coil takes one harmonic out. It has to be tuned.',
    }),
    elliptic: choice({
      label: 'Elliptic',
      options: yesNo,
      default: 'yes',
      help: 'The steepest for its number of elements; every coil is a trap that has to be tuned.',
    }),
    fitLeast: quantity({
      label: 'Return loss at least',
      symbol: 'A_fit',
      unit: 'dB',
      range: [6, 40],
      default: 14,
      typical: [14, 20],
      digits: 3,
      help: 'How near the network has to come to the load that the final wants.',
      source: 'common practice, no source',
    }),
    lossMost: quantity({
      label: 'Loss at most',
      symbol: 'A_most',
      unit: 'dB',
      range: [0.01, 6],
      default: 1,
      typical: [0.3, 1],
      digits: 4,
      help: 'What the network may keep for itself.',
    }),
    powerLeast: quantity({
      label: 'Power at least',
      symbol: 'p_least',
      unit: '%',
      range: [0.2, 1],
      default: 0.85,
      digits: 3,
      help: 'Of the power wanted, at the antenna. Real capacitors never make the load to a hair.',
      source: 'common practice, no source',
    }),
  },
  results: {
    looked: count({
      label: 'Networks looked through',
      symbol: 'N_c',
      help: 'Each is built with real parts and held against the rule; those that you leave out too, to say what they would bring.',
    }),
    kinds: table({
      label: 'What is looked through',
      help: 'Kinds of network, and how many of each.',
      columns: {
        kind: words({ label: 'Kind', help: 'Family of the filter.' }),
        allowed: choice({
          label: 'May be suggested',
          options: yesNo,
          help: 'As chosen above.',
        }),
        number: count({ label: 'Number', help: 'By elements, ripple, cutoff and match.' }),
      },
    }),
  },
});
