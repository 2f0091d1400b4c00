import { choice, curve, quantity, table, words } from '../../fields/declare.ts';

/** Heat and limits. */
export const heatResults = {
  dissipation: quantity({
    label: 'Heat at PEP',
    symbol: 'P_d',
    unit: 'W',
    digits: 3,
    help: 'In the final with one tone at full power.',
  }),
  dissipationEach: quantity({
    label: 'Heat at PEP in each',
    symbol: 'P_d1',
    unit: 'W',
    digits: 3,
    help: 'Several share it.',
  }),
  dissipationTone: quantity({
    label: 'Heat with the worst tone',
    symbol: 'P_d_tone',
    unit: 'W',
    digits: 3,
    help: 'A whistle somewhat below full power heats more than full power: key-down is reckoned with this.',
  }),
  dissipationTwoTone: quantity({
    label: 'Heat on two tones',
    symbol: 'P_d_2',
    unit: 'W',
    digits: 3,
    help: 'Two equal tones that reach full power.',
  }),
  dissipationSpeech: quantity({
    label: 'Heat on speech',
    symbol: 'P_d_sp',
    unit: 'W',
    digits: 3,
    help: 'While speaking without a pause, at the mean power assumed.',
  }),
  junction: quantity({
    label: 'Junction on speech',
    symbol: 'T_j',
    unit: '°C',
    digits: 2,
    help: 'Of the final, in the warmest air, without a pause. The case is hot enough to burn a finger long before the junction suffers.',
  }),
  junctionTone: quantity({
    label: 'Junction with the worst tone',
    symbol: 'T_j_tone',
    unit: '°C',
    digits: 2,
    help: 'Of the final with the key down for minutes: tests, whistles, tuning.',
  }),
  sinkSpeech: quantity({
    label: 'Heat sink for speech',
    symbol: 'R_sa_sp',
    unit: 'K/W',
    digits: 2,
    help: 'The greatest thermal resistance that will do; blank where the bare case is enough.',
  }),
  sinkTone: quantity({
    label: 'Heat sink for a steady tone',
    symbol: 'R_sa_tone',
    unit: 'K/W',
    digits: 2,
    help: 'The greatest thermal resistance that will do; blank where the bare case is enough.',
  }),
  sinkAdvice: words({
    label: 'Cooling',
    help: 'What the final needs for speech, and for a key-down test.',
  }),
  sinkKind: words({
    label: 'Which heat sink',
    help: 'The smallest of the usual ones that does, in free air.',
  }),
  overSink: curve({
    label: 'Junction over heat sink',
    help: 'Of the final, in the warmest air.',
    along: 'sink',
    of: {
      sink: quantity({
        label: 'Heat sink',
        symbol: 'R_x',
        unit: 'K/W',
        digits: 2,
        help: 'Thermal resistance into the air.',
      }),
      speech: quantity({
        label: 'On speech',
        symbol: 'T_x_sp',
        unit: '°C',
        digits: 2,
        help: 'Without a pause.',
      }),
      tone: quantity({
        label: 'Steady tone',
        symbol: 'T_x_t',
        unit: '°C',
        digits: 2,
        help: 'The one that heats most.',
      }),
    },
  }),
  limits: table({
    label: 'Limits of the transistors',
    help: 'How much of each limit is used. Over 80 % is close.',
    columns: {
      what: words({ label: 'Limit', help: 'Which limit.' }),
      used: quantity({
        label: 'Used',
        symbol: 'u_row',
        unit: '%',
        digits: 3,
        help: 'Share of the limit that is used; temperatures count from that of the air.',
      }),
      outcome: choice({
        label: 'Outcome',
        options: { holds: 'holds', close: 'close', fails: 'fails' },
        help: 'Holds up to 80 %, close up to 100 %.',
      }),
      stands: words({ label: 'Stands at', help: 'The figure and its limit.' }),
    },
  }),
} as const;
