import type { Ladder } from '../../circuit/ladder.ts';
import { ladderFormulas } from '../../circuit/ladderFormulas.ts';
import { gainAt } from '../../circuit/ladderGain.ts';
import { LARGEST_COIL, LARGEST_PULL, LEAST_SERIES } from '../../circuit/pullingReach.ts';
import type { Bound, Look, StageWorkings, Working, WorkingOf } from '../../fields/workings.ts';
import { crystalWorkings } from './crystalWorkings.ts';
import type { carrierFields } from './fields.ts';
import { TEST_TONE, VOICE, worstTone } from './tones.ts';
import { BOLTZMANN, CHARGE } from './transistor.ts';

type Where = Record<string, Bound>;

const chain = 'closed form: chain matrices of the ladder';
const equivalent = 'closed form of the equivalent circuit (IEC 60122-1)';
const arithmetic = 'arithmetic of a double-sideband modulator: products f ± tone';

/** The crystals of the oscillator, several side by side as one. */
const crystal: Where = {
  f_s: 'carrier.crystalFs',
  L_m: 'carrier.crystalLm',
  R_m: 'carrier.crystalRm',
  C_0: 'carrier.crystalC0',
  n_x: 'carrier.together',
};

function step(formula: string, unit: 'Hz' | 'Ω' | '1' | 'F' | 'A/V', says: string) {
  return { formula, unit, says } as const;
}

/** Steps from a frequency's symbol to the crystal's reactance and resistance there. */
const crystalAt = (f: string): Where => ({
  ...crystal,
  X_m: step(
    `2 * pi * L_m / n_x * (${f} - f_s) * (${f} + f_s) / ${f}`,
    'Ω',
    'reactance of the motional arm',
  ),
  a_x: step(`1 - 2 * pi * ${f} * n_x * C_0 * X_m`, '1', 'how C0 changes the reactance'),
  b_x: step(`2 * pi * ${f} * C_0 * R_m`, '1', 'how C0 changes the loss'),
});
const reactanceFormula = '(X_m * a_x - R_m / n_x * b_x) / (a_x^2 + b_x^2)';

/** A frequency at which the loop's reactance is zero. */
function loopZero(
  key: string,
  symbol: string,
  right: string,
  says: string,
  more: Where = {},
  assumes = 'The transistor makes up the losses and adds no reactance: true once the amplitude has settled, to some tenths of a hertz.',
): Working {
  return {
    says,
    left: reactanceFormula,
    right,
    root: symbol,
    where: {
      [symbol]: `carrier.${key}`,
      C_osc: 'carrier.divider',
      ...more,
      ...crystalAt(symbol),
    },
    source: equivalent,
    assumes,
  };
}

/** Fields that hold a part of the ladder: its symbol then links to where it comes from. */
const origins: Readonly<Record<string, string>> = {
  L_m: 'quartz.lm',
  C_m: 'quartz.cm',
  R_m: 'quartz.rm',
  C_0: 'quartz.c0',
  Q_c: 'filter.capacitorQ',
  R_S: 'filter.ends',
  R_L: 'filter.endsLoad',
};

/** The filter's gain at frequencies that are steps of their own, and the formulas for it. */
function levels(
  look: Look,
  symbols: readonly string[],
): { formulas: readonly string[]; where: Where } {
  const { formulas, where } = ladderFormulas(look('filter.ladder') as Ladder, symbols);
  const linked = Object.entries(where).map(([symbol, term]): [string, Bound] => {
    const path = origins[symbol];
    return path !== undefined && 'value' in term && look(path) === term.value
      ? [symbol, path]
      : [symbol, term];
  });
  return { formulas, where: Object.fromEntries(linked) };
}

const wayOf = (look: Look): 1 | -1 => (look('plan.filterSideband') === 'lower' ? 1 : -1);

/** Filter attenuation at a carrier bound to `path`. */
const attenuation =
  (path: string): WorkingOf =>
  (look) => {
    const { formulas, where } = levels(look, ['f_c']);
    return {
      says: 'What the filter passes at the carrier, below what it passes at its best.',
      formula: `-(${formulas[0]}) - A_best`,
      where: { f_c: path, A_best: 'filter.loss', ...where },
      source: chain,
      assumes: 'The filter sees the resistances that it was designed for.',
    };
  };

/** Suppression of a tone with the carrier bound to `path`. */
const suppression =
  (path: string, tone: (look: Look) => Bound): WorkingOf =>
  (look) => {
    const [wanted, other] = wayOf(look) === 1 ? ['-', '+'] : ['+', '-'];
    const { formulas, where } = levels(look, ['f_w', 'f_o']);
    return {
      says: 'The same tone on both sides of the carrier: the filter’s gain at one less that at the other.',
      formula: `${formulas[0]} - ${formulas[1]}`,
      where: {
        f_c: path,
        f_t: tone(look),
        f_w: step(`f_c ${wanted} f_t`, 'Hz', 'the tone in the wanted sideband'),
        f_o: step(`f_c ${other} f_t`, 'Hz', 'the tone in the other sideband'),
        ...where,
      },
      source: chain,
      assumes: 'The modulator makes both sidebands alike.',
    };
  };

const toneOf = (value: number, says: string) => (): Bound => ({ value, unit: 'Hz', says });

const worst =
  (path: string): ((look: Look) => Bound) =>
  (look) => {
    const ladder = look('filter.ladder') as Ladder;
    const carrier = look(path) as number;
    return {
      value: worstTone((f) => gainAt(ladder, f), carrier, wayOf(look)),
      unit: 'Hz',
      says: `the tone with the least, of those from ${VOICE.low} to ${VOICE.high} Hz in steps of ${VOICE.step} Hz`,
    };
  };

/** From the edge that faces the carrier. */
const lowest =
  (path: string, level: 3 | 6): WorkingOf =>
  (look) => {
    const above = wayOf(look) === 1;
    return {
      says: 'An edge of the passband is heard as its distance from the carrier; none below zero.',
      formula: above ? 'max(f_c - f_edge, 0 * f_c)' : 'max(f_edge - f_c, 0 * f_c)',
      where: { f_c: path, f_edge: `filter.${above ? 'high' : 'low'}${level}` },
      source: arithmetic,
    };
  };

/** From the edge that does not. */
const highest =
  (path: string, level: 3 | 6): WorkingOf =>
  (look) => {
    const above = wayOf(look) === 1;
    return {
      says: 'The far edge of the passband, as its distance from the carrier.',
      formula: above ? 'f_c - f_edge' : 'f_edge - f_c',
      where: { f_c: path, f_edge: `filter.${above ? 'low' : 'high'}${level}` },
      source: arithmetic,
    };
  };

const outside =
  (path: string): WorkingOf =>
  (look) => ({
    says: 'From the −6 dB edge of the passband outwards.',
    formula: wayOf(look) === 1 ? 'f_c - f_edge' : 'f_edge - f_c',
    where: { f_c: path, f_edge: `filter.${wayOf(look) === 1 ? 'high6' : 'low6'}` },
    source: 'definition',
  });

/** A place by one of the rules, its own frequency bound to `path`. */
function placed(look: Look, rule: unknown, path: string): Working {
  if (rule === 'attenuation') {
    const { formulas, where } = levels(look, ['f_c']);
    return {
      says: 'The filter’s skirt is followed outwards until it is as far down as asked.',
      left: `-(${formulas[0]}) - A_best`,
      right: 'A_given',
      root: 'f_c',
      where: {
        f_c: path,
        A_given: 'carrier.attenuationGiven',
        A_best: 'filter.loss',
        ...where,
      },
      source: chain,
      assumes: 'The filter sees the resistances that it was designed for.',
    };
  }
  if (rule === 'offset') {
    const above = wayOf(look) === 1;
    return {
      says: 'A distance outwards from the −6 dB edge that faces the carrier.',
      formula: above ? 'f_edge + f_given' : 'f_edge - f_given',
      where: {
        f_edge: `filter.${above ? 'high6' : 'low6'}`,
        f_given: 'carrier.offsetGiven',
      },
      source: 'common practice, no source',
    };
  }
  if (rule === 'frequency') {
    return {
      says: 'As given.',
      formula: 'f_want',
      where: { f_want: 'carrier.frequencyGiven' },
      source: 'as typed',
    };
  }
  return {
    says: 'The end of the oscillator’s reach that is nearer to the place wanted.',
    formula: 'min(max(f_c, f_lo), f_hi)',
    where: { f_c: 'carrier.frequency', f_lo: 'carrier.reachLow', f_hi: 'carrier.reachHigh' },
    source: 'definition',
  };
}

/** Reactance that the series part has to add, from the crystal's at the carrier bound to `path`. */
const missing = (path: string): Where => ({
  f_c: path,
  C_osc: 'carrier.divider',
  ...crystalAt('f_c'),
  X_x: step(reactanceFormula, 'Ω', 'reactance of the crystal there'),
  X_ser: step('1 / (2 * pi * f_c * C_osc) - X_x', 'Ω', 'what is missing for zero round the loop'),
});

const capacitor = (path: string): Working => ({
  says: 'The loop is inductive by this much, so a capacitor in series takes it off.',
  formula: '-1 / (2 * pi * f_c * X_ser)',
  where: missing(path),
  source: equivalent,
});

const coil = (path: string): Working => ({
  says: 'The loop is capacitive by this much, so a coil in series makes it up.',
  formula: 'X_ser / (2 * pi * f_c)',
  where: missing(path),
  source: equivalent,
});

/** Slope of the loop's reactance at the carrier. */
const slope: Where = {
  f_c: 'carrier.frequency',
  X_m: step(
    '2 * pi * L_m / n_x * (f_c - f_s) * (f_c + f_s) / f_c',
    'Ω',
    'reactance of the motional arm',
  ),
  a_x: step('1 - 2 * pi * f_c * n_x * C_0 * X_m', '1', 'how C0 changes the reactance'),
};

function pull(look: Look, c: Where, symbol: string): Working {
  const l = look('carrier.seriesL');
  const coilTerm = typeof l === 'number';
  const inductor: Where = coilTerm ? { L_ser: 'carrier.seriesL' } : {};
  return {
    says: 'A little more capacitance takes reactance from the loop; the frequency falls until its slope has made that up.',
    formula: `1 / (2 * pi * f_c * ${symbol}^2) / ((2 * pi * L_m / n_x * (1 + (f_s / f_c)^2) + 2 * pi * n_x * C_0 * X_m^2) / a_x^2 + X_m / (a_x * f_c)${coilTerm ? ' + 4 * pi * L_ser' : ''})`,
    where: { ...c, ...inductor, ...crystal, ...slope },
    source: 'derivative of the loop’s reactance, worked by hand',
    assumes: 'The crystal’s loss is left out of the slope: parts in a thousand.',
  };
}

export const carrierWorkings: StageWorkings<typeof carrierFields> = {
  ...crystalWorkings,
  frequency: (look) => placed(look, look('carrier.rule'), 'carrier.frequency'),
  aboveFs: {
    says: 'The distance that the crystal has to be pulled.',
    formula: 'f_c - f_s',
    where: { f_c: 'carrier.frequency', f_s: 'carrier.crystalFs' },
    source: 'definition',
  },
  attenuation: attenuation('carrier.frequency'),
  outside: outside('carrier.frequency'),
  sideband: (look) => {
    const { formulas, where } = levels(look, ['f_d', 'f_u']);
    return {
      says: 'A tone makes a product on each side of the carrier; the one that the filter passes better is what comes out.',
      formula: `${formulas[0]} > ${formulas[1]} ? "lower" : "upper"`,
      where: {
        f_c: 'carrier.frequency',
        f_t: { value: TEST_TONE, unit: 'Hz', says: 'test tone' },
        f_d: step('f_c - f_t', 'Hz', 'the difference, below the carrier'),
        f_u: step('f_c + f_t', 'Hz', 'the sum, above the carrier'),
        ...where,
      },
      source: arithmetic,
      assumes: 'No conversion follows: the filter works at the frequency of the band.',
    };
  },
  'tone.product': {
    says: 'Multiplying a carrier by a tone gives their difference and their sum.',
    rule: 'Both products, and what is left of the carrier itself.',
    where: { f_c: 'carrier.frequency' },
    source: arithmetic,
  },
  'tone.frequency': (_, index) => ({
    says: 'Multiplying a carrier by a tone gives their difference and their sum.',
    formula: ['f_c - f_t', 'f_c + f_t', 'f_c'][index] ?? 'f_c',
    where: {
      f_c: 'carrier.frequency',
      f_t: { value: TEST_TONE, unit: 'Hz', says: 'test tone' },
    },
    source: arithmetic,
  }),
  'tone.attenuation': (look) => {
    const { formulas, where } = levels(look, ['f_t']);
    return {
      says: 'The filter’s gain there, with the sign of a loss.',
      formula: `-(${formulas[0]})`,
      where: { f_t: 'row.frequency', ...where },
      source: chain,
    };
  },
  audioLow6: lowest('carrier.frequency', 6),
  audioHigh6: highest('carrier.frequency', 6),
  audioLow3: lowest('carrier.frequency', 3),
  audioHigh3: highest('carrier.frequency', 3),
  suppression300: suppression('carrier.frequency', toneOf(300, 'a low tone of the voice')),
  suppression1k: suppression('carrier.frequency', toneOf(1000, 'the usual test tone')),
  suppressionWorst: suppression('carrier.frequency', worst('carrier.frequency')),
  'audio.wanted': (look) => sideOf(look, wayOf(look) === 1 ? '-' : '+'),
  'audio.opposite': (look) => sideOf(look, wayOf(look) === 1 ? '+' : '-'),
  'audio.suppression': {
    says: 'One side against the other, the same tone.',
    formula: 'G_w - G_o',
    where: { G_w: 'point.wanted', G_o: 'point.opposite' },
    source: 'definition',
  },
  'rules.rule': {
    says: 'The two rules of thumb, the frequency given if there is one, and what can be reached.',
    rule: 'One row for each way that gives a place near the filter.',
    where: {},
    source: 'common practice, no source',
  },
  'rules.frequency': (look) => placed(look, look('row.rule'), 'row.frequency'),
  'rules.outside': outside('row.frequency'),
  'rules.attenuation': attenuation('row.frequency'),
  'rules.audioLow6': lowest('row.frequency', 6),
  'rules.audioHigh6': highest('row.frequency', 6),
  'rules.suppression300': suppression('row.frequency', toneOf(300, 'a low tone of the voice')),
  'rules.suppression1k': suppression('row.frequency', toneOf(1000, 'the usual test tone')),
  'rules.suppressionWorst': suppression('row.frequency', worst('row.frequency')),
  'rules.seriesC': capacitor('row.frequency'),
  'rules.seriesL': coil('row.frequency'),
  gm: {
    says: 'The current over the thermal voltage kT/q, 26 mV near room temperature.',
    formula: 'q_e * I_E / (k_B * T_a)',
    where: {
      q_e: { value: CHARGE, unit: 'C', says: 'elementary charge, exact', source: 'SI brochure' },
      k_B: {
        value: BOLTZMANN,
        unit: 'J/K',
        says: 'Boltzmann constant, exact',
        source: 'SI brochure',
      },
      I_E: 'carrier.standing',
      T_a: 'plan.ambient',
    },
    source: 'Ebers–Moll: slope of the exponential',
    assumes: 'The junction is as warm as the air: the stage takes a few milliwatts.',
  },
  cpi: {
    says: 'The transition frequency counts both capacitances at the base; take the collector’s off.',
    formula: 'max(g_m / (2 * pi * f_T) - C_cb, 0 * C_cb)',
    where: { g_m: 'carrier.gm', f_T: 'carrier.ft', C_cb: 'carrier.ccb' },
    source: 'hybrid-pi model: fT = gm/2π(Cπ + Cμ)',
  },
  divider: {
    says: 'C1 with the transistor’s own across it, in series with C2, and what lies at the base across both.',
    formula: '(C_1 + C_pi) * C_2 / (C_1 + C_pi + C_2) + C_cb + C_st',
    where: {
      C_1: 'carrier.c1',
      C_pi: 'carrier.cpi',
      C_2: 'carrier.c2',
      C_cb: 'carrier.ccb',
      C_st: 'carrier.stray',
    },
    source: 'capacitances in series and in parallel',
    assumes: 'The collector is grounded for radio frequencies.',
  },
  bare: loopZero(
    'bare',
    'f_bare',
    '1 / (2 * pi * f_bare * C_osc)',
    'The crystal is as inductive as the oscillator is capacitive.',
  ),
  reachLow: (look) => {
    const bare = look('carrier.bare');
    const low = look('carrier.reachLow');
    if (typeof bare === 'number' && low === bare * (1 - LARGEST_PULL)) {
      return {
        says: 'Pulled by a coil as far as is wise: beyond, the coil’s drift becomes the carrier’s.',
        formula: 'f_bare * (1 - p_max)',
        where: {
          f_bare: 'carrier.bare',
          p_max: { value: LARGEST_PULL, unit: '1', says: 'largest pull by a coil, 0.05 %' },
        },
        source: 'builders’ experience, no source',
      };
    }
    return loopZero(
      'reachLow',
      'f_lo',
      '1 / (2 * pi * f_lo * C_osc) - min(X_most, 1 / (4 * pi * f_s * n_x * C_0))',
      'With a coil of 500 Ω in series, or of half the holder’s reactance where that is less: a larger one would oscillate by itself.',
      {
        X_most: { value: LARGEST_COIL, unit: 'Ω', says: 'largest reactance of a coil' },
      },
      'The limit of 500 Ω is builders’ experience, no source.',
    );
  },
  reachHigh: loopZero(
    'reachHigh',
    'f_hi',
    '(1 / C_osc + 1 / C_least) / (2 * pi * f_hi)',
    'With the smallest capacitor in series that a trimmer and its wiring leave.',
    { C_least: { value: LEAST_SERIES, unit: 'F', says: 'smallest capacitor in series' } },
    'Smaller than 2 pF isn’t to be had with wires attached: common practice, no source.',
  ),
  reactance: {
    says: 'The motional arm with the holder’s capacitance and the loss across it.',
    formula: reactanceFormula,
    where: { f_c: 'carrier.frequency', ...crystalAt('f_c') },
    source: equivalent,
  },
  resistance: {
    says: 'Loss as seen from outside: C0 makes it larger the further the crystal is pulled up.',
    formula: 'R_m / n_x / (a_x^2 + b_x^2)',
    where: { f_c: 'carrier.frequency', ...crystalAt('f_c') },
    source: `${equivalent}; makers’ Rm(1 + C0/CL)² to within (ωC0·Rm)²`,
  },
  loadCapacitance: {
    says: 'The capacitance that balances the crystal’s reactance: all that lies in series with it.',
    formula: '1 / (2 * pi * f_c * X_x)',
    where: { f_c: 'carrier.frequency', X_x: 'carrier.reactance' },
    source: 'definition (IEC 60122-1)',
  },
  part: {
    says: 'What is missing for zero reactance round the loop: negative asks for a capacitor, positive for a coil.',
    formula: 'abs(X_ser) < X_wire ? "none" : (X_ser < 0 * X_wire ? "capacitor" : "coil")',
    where: {
      ...missing('carrier.frequency'),
      X_wire: { value: 0.01, unit: 'Ω', says: 'below which a wire does as well' },
    },
    source: equivalent,
  },
  seriesC: capacitor('carrier.frequency'),
  seriesL: coil('carrier.frequency'),
  trimmer: {
    says: 'The smallest trimmer that covers a quarter either way, near its middle, with an E24 capacitor beside it if need be.',
    rule: 'Looked up among the usual foil trimmers: 1.5–5, 2–10, 4–20, 5.5–30, 7–60 pF.',
    where: { C_ser: 'carrier.seriesC' },
    source: 'common practice, from memory',
  },
  stockC: preferred('carrier.stockC', 'C_E24', 'F', 'E24'),
  stockL: preferred('carrier.stockL', 'L_E12', 'H', 'E12'),
  stockFrequency: (look) => {
    const withCoil = typeof look('carrier.stockL') === 'number';
    return loopZero(
      'stockFrequency',
      'f_E',
      withCoil
        ? '1 / (2 * pi * f_E * C_osc) - 2 * pi * f_E * L_E'
        : '(1 / C_osc + 1 / C_E) / (2 * pi * f_E)',
      'Where the loop’s reactance is zero with the part from the drawer.',
      withCoil ? { L_E: 'carrier.stockL' } : { C_E: 'carrier.stockC' },
    );
  },
  hzPerPf: (look) => pull(look, { C_ser: 'carrier.seriesC' }, 'C_ser'),
  hzPerStray: (look) => pull(look, { C_osc: 'carrier.divider' }, 'C_osc'),
  negativeResistance: {
    says: 'C1, C2 and the transistor in series are −gm/(ω²C1C2); the base’s capacitance across them divides it.',
    formula: '-r_n / ((1 + b_b * x_n)^2 + (b_b * r_n)^2)',
    where: {
      f_c: 'carrier.frequency',
      g_m: 'carrier.gm',
      C_1: 'carrier.c1',
      C_pi: 'carrier.cpi',
      C_2: 'carrier.c2',
      C_cb: 'carrier.ccb',
      C_st: 'carrier.stray',
      r_n: step(
        'g_m / ((2 * pi * f_c)^2 * (C_1 + C_pi) * C_2)',
        'Ω',
        'negative resistance of C1, C2 and transistor',
      ),
      x_n: step(
        '(1 / (C_1 + C_pi) + 1 / C_2) / (2 * pi * f_c)',
        'Ω',
        'reactance of C1 and C2 in series',
      ),
      b_b: { formula: '2 * pi * f_c * (C_cb + C_st)', unit: 'S', says: 'susceptance at the base' },
    },
    source: 'closed form of the three-capacitor oscillator with a transconductance',
    assumes:
      'Input resistance of the transistor and the emitter resistor are large against C1 and C2.',
  },
  startMargin: (look) => {
    const withCoil = typeof look('carrier.seriesL') === 'number';
    return {
      says: 'How many times over the transistor makes up for the loss while the amplitude is still small.',
      formula: withCoil ? '-R_neg / (R_x + 2 * pi * f_c * L_ser / Q_L)' : '-R_neg / R_x',
      where: {
        R_neg: 'carrier.negativeResistance',
        R_x: 'carrier.resistance',
        ...(withCoil
          ? { f_c: 'carrier.frequency', L_ser: 'carrier.seriesL', Q_L: 'carrier.coilQ' }
          : {}),
      },
      source: 'makers’ rule: at least 3, better 5',
    };
  },
};

function sideOf(look: Look, sign: '+' | '-'): Working {
  const { formulas, where } = levels(look, ['f_p']);
  return {
    says: 'The filter’s gain where the modulator puts the tone on this side of the carrier.',
    formula: formulas[0] ?? '',
    where: {
      f_c: 'carrier.frequency',
      f_t: 'point.tone',
      f_p: step(`f_c ${sign} f_t`, 'Hz', 'where the tone lies'),
      ...where,
    },
    source: chain,
  };
}

/** A preferred value is looked up, so it stands for itself; the sum shows how far off it is. */
function preferred(path: string, symbol: string, unit: 'F' | 'H', series: string): WorkingOf {
  return (look) => ({
    says: `The value of the ${series} series that is nearest by ratio.`,
    formula: symbol,
    where: {
      [symbol]: {
        value: look(path) as number,
        unit,
        says: `nearest value of ${series}`,
        source: 'IEC 60063',
      },
    },
    source: 'IEC 60063',
  });
}
