import { choice, count, declare, quantity } from '../../fields/declare.ts';
import { around, harmonics, marginAround, waves, worst } from './tables.ts';

/** What an antenna that does not fit makes of the network, the harmonics and the final. */
export const mismatchFields = declare({
  key: 'mismatch',
  title: 'Mismatch',
  asks: 'What becomes of harmonics, power and collector when the antenna does not fit?',
  inputs: {
    swr: quantity({
      label: 'Standing-wave ratio',
      symbol: 'S',
      unit: '1',
      range: [1, 3],
      default: 2,
      typical: [1.2, 2],
      digits: 3,
      help: 'Of the antenna as the network sees it, against the antenna resistance of the Plan. Every angle that a length of cable can make is gone through.',
    }),
  },
  results: {
    reflection: quantity({
      label: 'Reflection',
      symbol: 'rho',
      unit: '1',
      digits: 3,
      help: 'Voltage of the wave thrown back over that of the wave that arrives.',
    }),
    reflected: quantity({
      label: 'Power thrown back',
      symbol: 'p_r',
      unit: '%',
      digits: 3,
      help: 'Share of the power that arrives. It is not lost: it changes what the final sees.',
    }),
    margin: quantity({
      label: 'Least margin',
      symbol: 'M_min',
      unit: 'dB',
      digits: 3,
      help: 'Of all harmonics at the worst angle, with the antenna its plain resistance at the harmonics.',
    }),
    verdict: choice({
      label: 'Harmonics against the rule',
      options: { holds: 'holds', close: 'close', fails: 'fails' },
      help: 'At the worst angle. A planning figure: a measurement and the operator decide.',
    }),
    marginSame: quantity({
      label: 'Least margin, harmonics mismatched too',
      symbol: 'M_same',
      unit: 'dB',
      digits: 3,
      help: 'Where every harmonic meets a standing-wave ratio up to the same, each at its own worst angle.',
    }),
    marginAny: quantity({
      label: 'Least margin, any antenna at the harmonics',
      symbol: 'M_any',
      unit: 'dB',
      digits: 3,
      help: 'A bound: no antenna, open, short or tuned, can take more of any harmonic than the network has to give.',
    }),
    marginOrder: count({
      label: 'Harmonic with the least margin',
      help: 'At the worst angle.',
    }),
    power: quantity({
      label: 'Least power',
      symbol: 'P_min',
      unit: 'W',
      digits: 3,
      across: 'plan.antenna',
      help: 'Into the antenna at the worst angle, with the drive held to what the supply allows.',
    }),
    loss: quantity({
      label: 'Most loss of the network',
      symbol: 'A_max',
      unit: 'dB',
      digits: 4,
      help: 'At the worst angle: the parts carry what goes to and fro.',
    }),
    collector: quantity({
      label: 'Most collector voltage',
      symbol: 'V_c_max',
      unit: 'Vpk',
      digits: 3,
      help: 'By hand: the supply and the planned pulse of current into the highest load, if nothing held the drive. Below: what the supply holds it to.',
    }),
    collectorHeld: quantity({
      label: 'The same with the drive held',
      symbol: 'V_c_held',
      unit: 'Vpk',
      digits: 3,
      help: 'The collector swings up by as much as it can swing down to saturation.',
    }),
    heat: quantity({
      label: 'Most heat in the final',
      symbol: 'P_d_max',
      unit: 'W',
      digits: 3,
      help: 'At the worst angle, one tone at full power, the drive held.',
    }),
    worst,
    harmonics,
    around,
    marginAround,
    waves,
  },
});
