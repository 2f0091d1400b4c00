import { count, curve, quantity, table } from '../../fields/declare.ts';

const angle = (of: string, symbol: string) =>
  quantity({
    label: `at angle (${of})`,
    symbol,
    unit: '°',
    digits: 2,
    help: 'Of the antenna’s reflection, in steps of 5°: 0° where its resistance is high, 180° where it is low.',
  });

/** The worst over all angles, a row a standing-wave ratio. */
export const worst = table({
  label: 'The worst over all angles',
  help: 'For usual standing-wave ratios and for the one typed.',
  columns: {
    swr: quantity({ label: 'SWR', symbol: 'S', unit: '1', digits: 3, help: 'Of the antenna.' }),
    margin: quantity({
      label: 'Least margin',
      symbol: 'M_min',
      unit: 'dB',
      digits: 3,
      help: 'Of all harmonics, into the plain antenna resistance.',
    }),
    marginOrder: count({ label: 'of harmonic', help: 'The one with the least margin.' }),
    marginAngle: angle('margin', 'theta_M'),
    marginSame: quantity({
      label: 'Harmonics mismatched too',
      symbol: 'M_same',
      unit: 'dB',
      digits: 3,
      help: 'Every harmonic at a ratio up to the same and its own worst angle.',
    }),
    marginAny: quantity({
      label: 'Any antenna at the harmonics',
      symbol: 'M_any',
      unit: 'dB',
      digits: 3,
      help: 'Bound over all antennas.',
    }),
    loss: quantity({
      label: 'Most loss',
      symbol: 'A_max',
      unit: 'dB',
      digits: 4,
      help: 'Of the network.',
    }),
    lossAngle: angle('loss', 'theta_A'),
    power: quantity({
      label: 'Least power',
      symbol: 'P_min',
      unit: 'W',
      digits: 3,
      across: 'plan.antenna',
      help: 'Into the antenna, with the drive held to what the supply allows.',
    }),
    powerAngle: angle('power', 'theta_P'),
    collector: quantity({
      label: 'Most collector voltage',
      symbol: 'V_c_max',
      unit: 'Vpk',
      digits: 3,
      help: 'If the drive went on.',
    }),
    collectorAngle: angle('collector', 'theta_V'),
    heat: quantity({
      label: 'Most heat in the final',
      symbol: 'P_d_max',
      unit: 'W',
      digits: 3,
      help: 'With the drive held.',
    }),
    heatAngle: angle('heat', 'theta_H'),
  },
});

/** What an antenna can make of each harmonic. */
export const harmonics = table({
  label: 'What an antenna can make of each harmonic',
  help: 'Looking back into the network the antenna sees almost pure reactance, and may tune it.',
  columns: {
    order: count({ label: 'Harmonic', help: 'Multiple of the operating frequency.' }),
    back: quantity({
      label: 'Reflection back',
      symbol: 'rho_n',
      unit: '1',
      digits: 4,
      help: 'Of the network as the antenna sees it at this harmonic.',
    }),
    same: quantity({
      label: 'Rise up to the same SWR',
      symbol: 'r_same',
      unit: 'dB',
      digits: 3,
      help: 'Most that an antenna of no more than the typed ratio takes more than the plain resistance.',
    }),
    any: quantity({
      label: 'Rise in any antenna',
      symbol: 'r_any',
      unit: 'dB',
      digits: 3,
      help: 'Most that any antenna could take more; blank where the network is lossless.',
    }),
  },
});

/** The antenna's reflection once round at the ratio typed. */
export const around = curve({
  label: 'Once round at this ratio',
  help: 'A quarter wavelength of cable goes half way round.',
  along: 'angle',
  of: {
    angle: quantity({
      label: 'Angle of the reflection',
      symbol: 'theta',
      unit: '°',
      digits: 2,
      help: 'At the antenna terminal of the network.',
    }),
    resistance: quantity({
      label: 'Load of the collector',
      symbol: 'R_in',
      unit: 'Ω',
      digits: 3,
      help: 'Real part.',
    }),
    reactance: quantity({
      label: 'Its reactance',
      symbol: 'X_in',
      unit: 'Ω',
      digits: 3,
      help: 'Positive is inductive.',
    }),
    power: quantity({
      label: 'Power',
      symbol: 'P',
      unit: 'W',
      digits: 3,
      across: 'plan.antenna',
      help: 'Into the antenna.',
    }),
    loss: quantity({
      label: 'Loss',
      symbol: 'A',
      unit: 'dB',
      digits: 4,
      help: 'Of the network.',
    }),
    held: quantity({
      label: 'Collector voltage, drive held',
      symbol: 'V_held',
      unit: 'Vpk',
      digits: 3,
      help: 'Peak.',
    }),
    unheld: quantity({
      label: 'Collector voltage, drive going on',
      symbol: 'V_on',
      unit: 'Vpk',
      digits: 3,
      help: 'Peak.',
    }),
    heat: quantity({
      label: 'Heat in the final',
      symbol: 'P_d',
      unit: 'W',
      digits: 3,
      help: 'One tone at full power.',
    }),
  },
});

/** The same round, for the rules. */
export const marginAround = curve({
  label: 'Least margin once round',
  help: 'Of all harmonics, into the plain antenna resistance.',
  along: 'angle',
  of: {
    angle: quantity({
      label: 'Angle of the reflection',
      symbol: 'theta',
      unit: '°',
      digits: 2,
      help: 'At the antenna terminal of the network.',
    }),
    margin: quantity({
      label: 'Least margin',
      symbol: 'M',
      unit: 'dB',
      digits: 3,
      help: 'Of all harmonics, from the level up to the limit.',
    }),
  },
});

const part = (symbol: string, says: string) =>
  quantity({ label: symbol.replace('_', ', '), symbol, unit: '1', digits: 4, help: says });

const forward = 'for a forward wave of one volt at the antenna terminal';
const backward = 'for each volt of the wave thrown back';

/** The network by what it takes at its input, at the operating frequency and each harmonic. */
export const waves = table({
  label: 'The network as four numbers',
  help: 'Volts at the input are a + b·Γ, amperes (c + d·Γ)/R, for a forward wave of one volt and a reflection Γ. Real and imaginary parts.',
  columns: {
    order: count({ label: 'Multiple', help: 'Of the operating frequency.' }),
    frequency: quantity({
      label: 'Frequency',
      symbol: 'f_n',
      unit: 'Hz',
      digits: 5,
      help: 'Where it lies.',
    }),
    ar: part('a_re', `Volts at the input ${forward}, real part.`),
    ai: part('a_im', `Volts at the input ${forward}, imaginary part.`),
    br: part('b_re', `Volts at the input ${backward}, real part.`),
    bi: part('b_im', `Volts at the input ${backward}, imaginary part.`),
    cr: part('c_re', `Current at the input ${forward}, times the antenna resistance, real part.`),
    ci: part(
      'c_im',
      `Current at the input ${forward}, times the antenna resistance, imaginary part.`,
    ),
    dr: part('d_re', `Current at the input ${backward}, times the antenna resistance, real part.`),
    di: part(
      'd_im',
      `Current at the input ${backward}, times the antenna resistance, imaginary part.`,
    ),
  },
});
