import { stretchAt } from '../../circuit/ferritePermeability.ts';
import type { Bound, Look, StageWorkings, Working, WorkingOf } from '../../fields/workings.ts';
import { fluxOutcome, guide, rule } from './coilWorkings.ts';
import {
  copperOf,
  cutOf,
  factorOf,
  guideStep,
  initial,
  nominal,
  permeabilityOf,
  roundStep,
  rowFormer,
  sizeOf,
  warming,
  wireOf,
} from './ferriteSteps.ts';
import type { windingsFields } from './fields.ts';
import { MIXES } from './lossCurve.ts';
import { LIGHT, SHORT } from './transformerRows.ts';
import { formAt, isTapped, kindAt, ratioAt, turnsOf } from './turnsWorkings.ts';

type Results = (typeof windingsFields)['results'];
type Column<T extends 'transformers' | 'transformerEdges' | 'transformerMixes'> =
  `${T}.${keyof Results[T]['columns'] & string}`;
type Keys =
  | Column<'transformers'>
  | Column<'transformerEdges'>
  | Column<'transformerMixes'>
  | `transformerLosses.in${(typeof MIXES)[number]}`;

/** Workings that the table of transformers and that of the mixes have in common. */
function alike(table: 'transformers' | 'transformerMixes') {
  const on = (look: Look, index: number) => rowFormer(look, table, index);
  const at = (look: Look) => look('plan.nominal') as number;
  return {
    label: rule('Output transformer, modulator, then those between the stages.'),
    first: (look: Look, index: number) => impedance(look, table, index, 'first'),
    second: (look: Look, index: number) => impedance(look, table, index, 'second'),
    power: (look: Look, index: number): Working =>
      kindAt(look, table, index) === 'output'
        ? {
            says: 'What the final makes at full power.',
            formula: 'P_c',
            where: { P_c: 'transmit.collectorPower' },
            source: 'Transmit',
          }
        : {
            says: 'What the final makes, less its gain.',
            formula: 'P_c / 10^(G_F / 10)',
            where: { P_c: 'transmit.collectorPower', G_F: 'transmit.finalGain' },
            source: 'Transmit',
          },
    al: (look: Look, index: number) => factorOf(on(look, index)),
    stores: (look: Look, index: number) => permeabilityOf(on(look, index), at(look), nominal, 1),
    loses: (look: Look, index: number) => permeabilityOf(on(look, index), at(look), nominal, 2),
    turnsExact: (look: Look, index: number): Working => ({
      says: 'Turns whose impedance is so many times the circuit’s, on the winding with fewer.',
      formula: 'sqrt(k_X * R_1 / (2 * pi * f_0 * A_L * m_f)) * n_few',
      where: {
        k_X: 'windings.reactanceTimes',
        R_1: 'row.first',
        f_0: nominal,
        A_L: 'row.al',
        ...keptStep(look, table, index),
        ...fewer(look, table, index),
      },
      source: 'closed form of an inductance; factor: common practice',
    }),
    turnsFlux: (look: Look, index: number): Working => ({
      says: 'Faraday’s law solved for the turns at the guideline’s flux, on the winding with fewer.',
      formula: 'V_1 / (sqrt(2) * pi * A_e * f_0 * B_lim) * n_few',
      where: {
        ...voltageStep,
        A_e: sizeOf(on(look, index), 'area'),
        f_0: nominal,
        ...guideStep,
        ...fewer(look, table, index),
      },
      source: 'Faraday’s law',
    }),
    turns: (look: Look, index: number) => turnsOf(look, table, index, 'first'),
    secondTurns: (look: Look, index: number) => turnsOf(look, table, index, 'second'),
    inductance: {
      says: 'A_L times the square of the turns.',
      formula: 'A_L * N^2',
      where: { A_L: 'row.al', N: 'row.turns' },
      source: 'definition of A_L',
    } as Working,
    shuntR: (look: Look, index: number) => beside(look, table, index, 'row.loses'),
    shuntX: (look: Look, index: number) => beside(look, table, index, 'row.stores'),
    loss: lossOf('row.first'),
    taken: {
      says: 'The resistance that the core’s loss makes takes its share of the power.',
      formula: 'P_1 * R_1 / R_w',
      where: { P_1: 'row.power', R_1: 'row.first', R_w: 'row.shuntR' },
      source: 'Ohm’s law',
      assumes: 'A steady tone; loss as at small signals.',
    } as Working,
    rise: (look: Look, index: number) => warming(on(look, index)),
  };
}

const { label, ...both } = alike('transformers');
const mixes = alike('transformerMixes');

const named = <P extends string, T extends Record<string, WorkingOf>>(
  prefix: P,
  table: T,
): { [K in keyof T & string as `${P}.${K}`]: T[K] } =>
  Object.fromEntries(Object.entries(table).map(([key, one]) => [`${prefix}.${key}`, one])) as {
    [K in keyof T & string as `${P}.${K}`]: T[K];
  };

export const transformerWorkings: Pick<
  StageWorkings<typeof windingsFields>,
  Extract<keyof StageWorkings<typeof windingsFields>, Keys>
> = {
  ...named('transformers', both),
  ...named('transformerMixes', mixes),
  'transformers.label': label,
  'transformers.does': rule('By its place.'),
  'transformers.core': rule(
    'The one asked for; else, for power, the smallest of mix 61 that stays cool (up to 1 W FT37, up to 5 W FT50, up to 20 W FT82, above two of them), and for small signals the first on which thirty turns suffice: FT37-43, then FT50-43 and a two-hole core; below 5 MHz FT37-77, FT50-77 and a two-hole core of mix 73.',
  ),
  'transformers.form': rule(
    'The modulator’s three wires go on together; else the second winding goes over the first. For a final in push-pull the winding on its side is two wires together, joined in the middle.',
  ),
  'transformers.ratioOff': (look, index) => ({
    says: 'Whole turns over the ratio that is wanted.',
    formula: 'N_1 / N_2 / r_12 - 1',
    where: { N_1: 'row.turns', N_2: 'row.secondTurns', ...ratioStep(look, 'transformers', index) },
    source: 'definition',
  }),
  'transformers.impedance': (look, index) => ({
    says: 'Reactance of the inductance, with the permeability that is left.',
    formula: '2 * pi * f_0 * L_1 * m_f',
    where: { f_0: nominal, L_1: 'row.inductance', ...keptStep(look, 'transformers', index) },
    source: 'closed form of an inductance',
  }),
  'transformers.times': {
    says: 'The winding’s impedance over the circuit’s.',
    formula: 'Z_1 / R_1',
    where: { Z_1: 'row.impedance', R_1: 'row.first' },
    source: 'definition',
  },
  'transformers.takenSpeech': {
    says: 'On the mean of speech.',
    formula: 'P_h * d_sp',
    where: { P_h: 'row.taken', d_sp: 'transmit.speechMean' },
    source: 'Transmit’s assumption about speech',
  },
  'transformers.leakage': (look, index) => {
    const trifilar = kindAt(look, 'transformers', index) === 'trifilar';
    return {
      says: trifilar
        ? 'Wires that touch, as a line of two wires of the first winding’s length.'
        : 'Wires two diameters apart on the mean, as a line of the first winding’s length.',
      formula: `mu_0 / pi * acosh(${trifilar ? '' : '2 * '}d_o / d_w) * N_1 * (l_r + pi * d_o)`,
      where: {
        mu_0: {
          value: 4e-7 * Math.PI,
          unit: 'H/m',
          says: 'permeability of the vacuum',
          source: 'CODATA',
        },
        d_o: wireOf(look, 'transformers', index, 'overall'),
        d_w: 'row.bare',
        N_1: 'row.turns',
        ...roundStep(rowFormer(look, 'transformers', index)),
      },
      source: 'inductance of a two-wire line, closed form',
      assumes: 'Within a factor of two: how close the windings lie decides.',
    };
  },
  'transformers.upper': (look, index) => ({
    says: 'The lower of two limits: leakage that costs 1 dB, and a wire of a twenty-fourth of a wavelength.',
    formula: 'min(f_L, f_w)',
    where: upperSteps(look, index),
    source: 'closed form of a series reactance; 15°: common practice',
  }),
  'transformers.upperBy': (look, index) => ({
    says: 'Which of the two limits is the lower.',
    formula: 'f_L < f_w ? "leakage" : "length"',
    where: upperSteps(look, index),
    source: 'this program’s own rule',
  }),
  'transformers.angle': (look, index) => ({
    says: 'Length over the wavelength in the air, as an angle.',
    formula: '2 * pi * l_max * f_0 / c_0',
    where: { ...longestStep(look, index), f_0: nominal, c_0: lightSpeed },
    source: 'definition',
  }),
  'transformers.wire': rule('Thickest that fits with all windings in one layer, up to 0.5 mm.'),
  'transformers.bare': (look, index) => copperOf(look, 'transformers', index),
  'transformers.length': (look, index) =>
    cutOf(
      rowFormer(look, 'transformers', index),
      wireOf(look, 'transformers', index, 'overall'),
      1,
      'row.turns',
    ),
  'transformers.secondLength': (look, index) =>
    cutOf(
      rowFormer(look, 'transformers', index),
      wireOf(look, 'transformers', index, 'overall'),
      3,
      'row.secondTurns',
    ),
  'transformers.flux': (look, index) => ({
    says: 'Faraday’s law for a sine.',
    formula: 'V_1 / (sqrt(2) * pi * N * A_e * f_0)',
    where: {
      ...voltageStep,
      N: 'row.turns',
      A_e: sizeOf(rowFormer(look, 'transformers', index), 'area'),
      f_0: nominal,
    },
    source: 'Faraday’s law',
  }),
  'transformers.fluxLimit': guide(),
  'transformers.outcome': fluxOutcome(),
  'transformers.build': rule('Turns and core of this row in one line.'),
  'transformers.joins': rule('By the way the windings lie.'),
  'transformers.instead': rule(
    'Where the impedances are nine to one and more: Q = √(R₂/R₁ − 1), the coil R₁Q in series with the lower, the capacitor R₂/Q across the higher.',
  ),
  'transformerMixes.core': rule('The size that the power asks for, in each mix.'),
  'transformerLosses.in61': along('61'),
  'transformerLosses.in43': along('43'),
  'transformerLosses.in77': along('77'),
  'transformerEdges.label': rule('Each transformer twice.'),
  'transformerEdges.edge': rule('Lower, then upper.'),
  'transformerEdges.frequency': (look, index) => ({
    says: 'From the table of bands.',
    formula: 'f_e',
    where: {
      f_e: {
        value: edgeAt(look, index)?.frequency ?? 0,
        unit: 'Hz',
        says: 'edge of the band',
        source: 'ITU Radio Regulations, Article 5, from memory',
      },
    },
    source: 'ITU Radio Regulations, Article 5, from memory',
  }),
  'transformerEdges.stores': (look, index) => edgePermeability(look, index, 1),
  'transformerEdges.loses': (look, index) => edgePermeability(look, index, 2),
  'transformerEdges.shuntR': (look, index) => edgeBeside(look, index, 'row.loses'),
  'transformerEdges.shuntX': (look, index) => edgeBeside(look, index, 'row.stores'),
  'transformerEdges.loss': (look, index) =>
    lossOf({ value: ownRow(look, index)?.first ?? 0, unit: 'Ω', says: 'what it works across' }),
};

/** Loss of one mix at a point of the curve. */
function along(mix: (typeof MIXES)[number]) {
  return (look: Look, index: number): Working => {
    const place = MIXES.indexOf(mix);
    const former = rowFormer(look, 'transformerMixes', place);
    const curve = look('windings.transformerLosses') as { readonly frequency: Float64Array };
    const { from, to } = stretchAt(former.ferrite.curve, curve.frequency[index] ?? 1e6);
    const row = (look('windings.transformerMixes') as readonly OwnRow[])[place];
    const point = (which: 0 | 1 | 2, end: 'from' | 'to'): Bound => ({
      value: (end === 'from' ? from : to)[which],
      unit: which === 0 ? 'Hz' : '1',
      says: `${former.ferrite.title}: ${['frequency', 'μ′', 'μ″'][which]} of a row of its curve`,
      source: former.ferrite.source,
    });
    const part = (name: string) => `${name}_a * (${name}_b / ${name}_a)^q`;
    return {
      says: 'As in the table of mixes, at this frequency.',
      formula: '10 * log10((1 + R_1 / (2 * R_w))^2 + (R_1 / (2 * X_w))^2)',
      where: {
        f: 'point.frequency',
        f_a: point(0, 'from'),
        f_b: point(0, 'to'),
        mu_a: point(1, 'from'),
        mu_b: point(1, 'to'),
        nu_a: point(2, 'from'),
        nu_b: point(2, 'to'),
        q: { formula: 'log(f / f_a) / log(f_b / f_a)', unit: '1', says: 'place between the rows' },
        mu_1: { formula: part('mu'), unit: '1', says: 'μ′' },
        mu_2: { formula: part('nu'), unit: '1', says: 'μ″' },
        mu_i: initial(former),
        R_1: { value: row?.first ?? 0, unit: 'Ω', says: 'what it works across' },
        L_1: { value: row?.inductance ?? 0, unit: 'H', says: 'of its first winding' },
        X_m: {
          formula: '2 * pi * f * L_1 * (mu_1^2 + mu_2^2) / mu_i',
          unit: 'Ω',
          says: 'reactance, times |μ|²/μᵢ',
        },
        R_w: { formula: 'X_m / mu_2', unit: 'Ω', says: 'core loss as a resistance' },
        X_w: { formula: 'X_m / mu_1', unit: 'Ω', says: 'reactance beside it' },
      },
      source: 'closed form: a shunt impedance between equal resistances',
      assumes: 'Source and load are equal; leakage and copper are left out.',
    };
  };
}

interface OwnRow {
  readonly first: number;
  readonly inductance: number;
}

const edgeAt = (look: Look, index: number) =>
  (look('windings.transformerEdges') as readonly { readonly frequency: number }[])[index];

/** The transformer that a row of the edges belongs to: two rows each. */
const ownRow = (look: Look, index: number) =>
  (look('windings.transformers') as readonly OwnRow[])[Math.floor(index / 2)];

function edgePermeability(look: Look, index: number, part: 1 | 2): Working {
  const former = rowFormer(look, 'transformers', Math.floor(index / 2));
  return permeabilityOf(former, edgeAt(look, index)?.frequency ?? 1, 'row.frequency', part);
}

function edgeBeside(look: Look, index: number, over: string): Working {
  const former = rowFormer(look, 'transformers', Math.floor(index / 2));
  const l: Bound = {
    value: ownRow(look, index)?.inductance ?? 0,
    unit: 'H',
    says: 'of its first winding',
  };
  return besideOf(initial(former), 'row.frequency', l, over);
}

/** Loss and reactance side by side, from the complex permeability. */
function beside(
  look: Look,
  table: 'transformers' | 'transformerMixes',
  index: number,
  over: string,
): Working {
  return besideOf(initial(rowFormer(look, table, index)), nominal, 'row.inductance', over);
}

function besideOf(mu: Bound, f0: Bound, l: Bound, over: string): Working {
  return {
    says: 'The winding’s impedance jωL·(μ′ − jμ″)/μᵢ turned into two parts side by side.',
    formula: '2 * pi * f_0 * L_1 * (mu_1^2 + mu_2^2) / (mu_i * mu_x)',
    where: { f_0: f0, L_1: l, mu_1: 'row.stores', mu_2: 'row.loses', mu_i: mu, mu_x: over },
    source: 'series turned into parallel, closed form',
  };
}

function lossOf(r1: Bound): Working {
  return {
    says: 'The winding lies across source and load: it takes by its resistance and throws back by its reactance.',
    formula: '10 * log10((1 + R_1 / (2 * R_w))^2 + (R_1 / (2 * X_w))^2)',
    where: { R_1: r1, R_w: 'row.shuntR', X_w: 'row.shuntX' },
    source: 'closed form: a shunt impedance between equal resistances',
    assumes: 'Source and load are equal; leakage and copper are left out.',
  };
}

/** Size of the permeability over the initial one. */
function keptStep(
  look: Look,
  table: 'transformers' | 'transformerMixes',
  index: number,
): Record<string, Bound> {
  return {
    mu_1: 'row.stores',
    mu_2: 'row.loses',
    mu_i: initial(rowFormer(look, table, index)),
    m_f: { formula: 'sqrt(mu_1^2 + mu_2^2) / mu_i', unit: '1', says: 'permeability left' },
  };
}

/** Voltage across the first winding at full power. */
const voltageStep: Record<string, Bound> = {
  P_1: 'row.power',
  R_1: 'row.first',
  V_1: { formula: 'sqrt(P_1 * R_1)', unit: 'Vrms', says: 'voltage across the first winding' },
};

const lightSpeed: Bound = { value: LIGHT, unit: 'm/s', says: 'speed of light', source: 'exact' };

function longestStep(look: Look, index: number): Record<string, Bound> {
  const rows = look('windings.transformers') as readonly { readonly secondLength: number | null }[];
  return (rows[index]?.secondLength ?? null) === null
    ? { l_max: 'row.length' }
    : {
        l_w: 'row.length',
        l_w2: 'row.secondLength',
        l_max: { formula: 'max(l_w, l_w2)', unit: 'm', says: 'longest wire' },
      };
}

function upperSteps(look: Look, index: number): Record<string, Bound> {
  return {
    R_1: 'row.first',
    L_s: 'row.leakage',
    f_L: { formula: 'R_1 / (2 * pi * L_s)', unit: 'Hz', says: 'where leakage costs 1 dB' },
    ...longestStep(look, index),
    c_0: lightSpeed,
    k_w: { value: SHORT, unit: '1', says: '15° of a wavelength' },
    f_w: { formula: 'k_w * c_0 / l_max', unit: 'Hz', says: 'where the longest wire is 15° long' },
  };
}

function ratioStep(
  look: Look,
  table: 'transformers' | 'transformerMixes',
  index: number,
): Record<string, Bound> {
  const { symbol, where } = ratioAt(look, table, index);
  return symbol === '1'
    ? { r_12: { value: 1, unit: '1', says: 'all windings have the same turns' } }
    : where;
}

/** `n_few`: turns of the smaller winding over the first. */
function fewer(
  look: Look,
  table: 'transformers' | 'transformerMixes',
  index: number,
): Record<string, Bound> {
  const { symbol, where } = ratioAt(look, table, index);
  if (symbol === '1') {
    return { n_few: { value: 1, unit: '1', says: 'all windings have the same turns' } };
  }
  return {
    ...where,
    n_few: { formula: `min(1, 1 / ${symbol})`, unit: '1', says: 'smaller winding over first' },
  };
}

function impedance(
  look: Look,
  table: 'transformers' | 'transformerMixes',
  index: number,
  side: 'first' | 'second',
): Working {
  const kind = kindAt(look, table, index);
  const is = (path: string, symbol: string, says: string): Working => ({
    says,
    formula: symbol,
    where: { [symbol]: path },
    source: 'the stages before',
  });
  if (kind === 'trifilar') {
    return is(
      'transmit.modulatorImpedance',
      'R_mod',
      'The modulator’s impedance across one winding.',
    );
  }
  if (kind === 'output') {
    return side === 'second'
      ? is('plan.antenna', 'R_ant', 'The output network and the antenna behind it.')
      : isTapped(look)
        ? {
            says: 'The load from collector to collector: half the turns have a quarter of it.',
            formula: 'R_c / 4',
            where: { R_c: 'transmit.collectorLoad' },
            source: 'closed form of the ideal transformer',
          }
        : is('transmit.collectorLoad', 'R_c', 'The load that the final wants.');
  }
  const couplings = look('transmit.couplings') as readonly {
    readonly collector: number;
    readonly following: number;
  }[];
  const row = couplings[kind];
  const value = (side === 'first' ? row?.collector : row?.following) ?? 0;
  const halved = side === 'second' && formAt(look, table, index) === 'halves';
  return {
    says: halved
      ? 'As Transmit’s table of transformers has it; half the turns have a quarter of it.'
      : 'As Transmit’s table of transformers has it.',
    formula: halved ? 'R / 4' : 'R',
    where: { R: { value, unit: 'Ω', says: 'this side, from Transmit' } },
    source: 'Transmit',
  };
}
