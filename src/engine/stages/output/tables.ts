import { choice, count, curve, quantity, table, words } from '../../fields/declare.ts';

const outcomes = { holds: 'holds', close: 'close', fails: 'fails' } as const;

/** Every part of the network, from collector to antenna. */
export const elements = table({
  label: 'Parts of the network',
  help: 'From the collector to the antenna. Volts and amperes at peak envelope power: the coils and the antenna terminal burn.',
  columns: {
    label: words({ label: 'Part', help: 'Its name in the circuit.' }),
    part: choice({
      label: 'Kind',
      options: {
        capacitor: 'capacitor to ground',
        coil: 'coil in the path',
        across: 'capacitor across the coil before it',
      },
      help: 'What it is and where it stands.',
    }),
    exactC: quantity({
      label: 'Capacitance, exact',
      symbol: 'C_x',
      unit: 'F',
      digits: 4,
      help: 'Where two meet at one point they are one part. In a trap, less what the coil has itself.',
    }),
    exactL: quantity({
      label: 'Inductance, exact',
      symbol: 'L_w',
      unit: 'H',
      digits: 4,
      help: 'A trap’s coil is meant to put the notch on its frequency together with the capacitor fitted.',
    }),
    fittedC: quantity({
      label: 'Capacitance fitted',
      symbol: 'C_f',
      unit: 'F',
      digits: 3,
      help: 'The nearest of the series chosen, or as measured.',
    }),
    l: quantity({
      label: 'Inductance fitted',
      symbol: 'L_x',
      unit: 'H',
      digits: 4,
      help: 'Trimmed by spreading or squeezing the turns, as whole turns come, or as measured.',
    }),
    made: words({ label: 'Made of', help: 'Two capacitors side by side, where it takes two.' }),
    volts: quantity({
      label: 'Voltage',
      symbol: 'V_x',
      unit: 'Vpk',
      digits: 3,
      help: 'Across the part, at peak envelope power into the planned antenna.',
    }),
    amps: quantity({
      label: 'Current',
      symbol: 'I_x',
      unit: 'Arms',
      digits: 3,
      help: 'Through the part, at peak envelope power.',
    }),
    rating: quantity({
      label: 'Voltage rating to buy',
      symbol: 'V_r',
      unit: 'V',
      digits: 3,
      help: 'The next usual rating above twice the peak voltage: a mismatched antenna can double it.',
      source: 'common practice, no source',
    }),
    heat: quantity({
      label: 'Heat',
      symbol: 'P_x',
      unit: 'W',
      digits: 2,
      help: 'Lost in the part with a steady tone at full power.',
    }),
    warmth: choice({
      label: 'Gets',
      options: { cool: 'cool', warm: 'warm', hot: 'hot: take a larger one' },
      help: 'Up to 0.1 W a small part stays cool; from 0.5 W on it gets hot in still air. Feel it with the power off.',
      source: 'common practice, no source',
    }),
  },
});

/** The coils of the network, for winding. */
export const coils = table({
  label: 'Coils of the network',
  help: 'What Windings has to make.',
  columns: {
    label: words({ label: 'Coil', help: 'Its name in the circuit.' }),
    l: quantity({ label: 'Inductance', symbol: 'L_w', unit: 'H', digits: 4, help: 'Wanted.' }),
    current: quantity({
      label: 'Current',
      symbol: 'I_x',
      unit: 'Arms',
      digits: 3,
      help: 'At peak envelope power.',
    }),
    voltage: quantity({
      label: 'Voltage',
      symbol: 'V_x',
      unit: 'Vpk',
      digits: 3,
      help: 'At peak envelope power.',
    }),
    own: quantity({
      label: 'Measured',
      symbol: 'L_own',
      unit: 'H',
      digits: 3,
      help: 'Where a part is as measured.',
    }),
  },
});

/** The coils as they would come out of whole turns, and their notches. */
export const asWound = table({
  label: 'The coils as wound',
  help: 'Where Q and own capacitance come from that are not typed.',
  columns: {
    label: words({ label: 'Coil', help: 'Its name in the circuit.' }),
    core: words({
      label: 'Core',
      help: 'As the core box says: the one asked for, or the smallest on which the turns fit in one layer and the flux keeps to its guideline.',
    }),
    wire: words({ label: 'Wire', help: 'The thickest that fits.' }),
    turns: count({ label: 'Turns', symbol: 'N', help: 'Passes through the hole.' }),
    turnsOnAir: quantity({
      label: 'Turns on air',
      symbol: 'N_a',
      unit: 'turns',
      digits: 3,
      help: 'Without a core; parts of a turn count.',
    }),
    lWound: quantity({
      label: 'Whole turns give',
      symbol: 'L_N',
      unit: 'H',
      digits: 4,
      help: 'Spread evenly over the core but for a gap; squeezing raises it, spreading lowers it.',
    }),
    q: quantity({
      label: 'Q',
      symbol: 'Q_Lx',
      unit: '1',
      digits: 2,
      help: 'As typed, or estimated for this core and wire within a third.',
    }),
    own: quantity({
      label: 'Own capacitance',
      symbol: 'C_s',
      unit: 'F',
      digits: 2,
      help: 'As typed, or estimated for touching turns.',
    }),
    notch: quantity({
      label: 'Notch',
      symbol: 'f_t',
      unit: 'Hz',
      digits: 4,
      help: 'What the coil and the capacitor across it stop, with the values fitted.',
    }),
  },
});

/** Second to tenth harmonic against the rule. */
export const harmonics = table({
  label: 'Harmonics at the antenna',
  help: 'Against the fundamental, with one tone at full power. A planning figure: measure before you rely on it.',
  columns: {
    order: count({ label: 'Harmonic', help: 'Multiple of the operating frequency.' }),
    frequency: quantity({
      label: 'Frequency',
      symbol: 'f_n',
      unit: 'Hz',
      digits: 5,
      help: 'Where it lies.',
    }),
    current: quantity({
      label: 'Collector current',
      symbol: 'I_n',
      unit: 'Apk',
      digits: 3,
      help: 'Of this harmonic, from the conduction angle.',
    }),
    transimpedance: quantity({
      label: 'Transimpedance',
      symbol: 'Z_n',
      unit: 'Ω',
      digits: 3,
      help: 'Volts at the antenna for each ampere out of the collector.',
    }),
    level: quantity({
      label: 'Level',
      symbol: 'L_n',
      unit: 'dBc',
      digits: 3,
      help: 'Against the fundamental. Blank where the cosine pulse has none of this harmonic. Below some −80 dBc layout and leakage decide, not this sum.',
    }),
    limit: quantity({
      label: 'Limit',
      symbol: 'L_lim',
      unit: 'dBc',
      digits: 3,
      help: 'By the rules chosen on the Plan.',
    }),
    margin: quantity({
      label: 'Margin',
      symbol: 'M_n',
      unit: 'dB',
      digits: 3,
      help: 'From the level up to the limit.',
    }),
    outcome: choice({
      label: 'Outcome',
      options: outcomes,
      help: 'Holds with the margin wanted; close without it; fails above the limit.',
    }),
  },
});

/** The network over frequency. */
export const response = curve({
  label: 'Response of the network',
  help: 'Volts at the antenna for the same collector current, against the operating frequency.',
  along: 'frequency',
  of: {
    frequency: quantity({
      label: 'Frequency',
      symbol: 'f',
      unit: 'Hz',
      digits: 5,
      help: 'From half the operating frequency to the tenth harmonic.',
    }),
    level: quantity({
      label: 'Response',
      symbol: 'A',
      unit: 'dB',
      digits: 3,
      help: 'Against the operating frequency.',
    }),
  },
});

export const verdict = choice({
  label: 'Harmonics against the rule',
  options: outcomes,
  help: 'By the harmonic with the least margin. A planning figure: local rules, a measurement and the operator, who answers for the station, decide.',
});
