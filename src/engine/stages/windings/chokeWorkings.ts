import { chokes } from '../../data/chokes.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { LINE, WEAK_GAIN } from './chokesWanted.ts';
import { fluxOutcome, guide, rule } from './coilWorkings.ts';
import {
  copperOf,
  cutOf,
  factorOf,
  guideStep,
  initial,
  nominal,
  permeabilityOf,
  rowFormer,
  sizeOf,
  warming,
  wireOf,
} from './ferriteSteps.ts';
import type { windingsFields } from './fields.ts';
import { CLEAR, SPARE } from './pickChoke.ts';
import { AT_HAND } from './readChokes.ts';

type Keys = `chokes.${keyof (typeof windingsFields)['results']['chokes']['columns']}`;

export const chokeWorkings: Pick<
  StageWorkings<typeof windingsFields>,
  Extract<keyof StageWorkings<typeof windingsFields>, Keys>
> = {
  'chokes.label': rule('Collector, base, supply.'),
  'chokes.does': rule('By its place.'),
  'chokes.resistance': (look, index) => circuit(look, index),
  'chokes.direct': (look, index) => direct(look, index),
  'chokes.needed': {
    says: 'So many times the circuit’s resistance as reactance.',
    formula: 'k_X * R_ch / (2 * pi * f_0)',
    where: { k_X: 'windings.reactanceTimes', R_ch: 'row.resistance', f_0: nominal },
    source: 'closed form of an inductance; factor: common practice',
  },
  'chokes.core': rule(
    'The one asked for; else mix 61 by the power for the collector, FT37-43 for the others.',
  ),
  'chokes.al': (look, index) => factorOf(on(look, index)),
  'chokes.stores': (look, index) => permeabilityOf(on(look, index), at(look), nominal, 1),
  'chokes.loses': (look, index) => permeabilityOf(on(look, index), at(look), nominal, 2),
  'chokes.turnsExact': (look, index) => ({
    says: 'Turns whose impedance is so many times the circuit’s.',
    formula: 'sqrt(k_X * R_ch / (2 * pi * f_0 * A_L * m_f))',
    where: {
      k_X: 'windings.reactanceTimes',
      R_ch: 'row.resistance',
      f_0: nominal,
      A_L: 'row.al',
      ...kept(look, index),
    },
    source: 'closed form of an inductance; factor: common practice',
  }),
  'chokes.turnsFlux': (look, index) => ({
    says: 'Faraday’s law solved for the turns at the guideline’s flux.',
    formula: 'V_1 / (sqrt(2) * pi * A_e * f_0 * B_lim)',
    where: { ...voltage, A_e: sizeOf(on(look, index), 'area'), f_0: nominal, ...guideStep },
    source: 'Faraday’s law',
  }),
  'chokes.turns': (look, index) => {
    const powered = nameOf(look, index) === 'Collector choke';
    return {
      says: 'The next whole turn that suffices.',
      formula: powered ? 'max(1, ceil(max(N_x, N_B)))' : 'max(1, ceil(N_x))',
      where: { N_x: 'row.turnsExact', ...(powered ? { N_B: 'row.turnsFlux' } : {}) },
      source: 'one turn is one pass through the hole',
    };
  },
  'chokes.inductance': {
    says: 'A_L times the square of the turns.',
    formula: 'A_L * N^2',
    where: { A_L: 'row.al', N: 'row.turns' },
    source: 'definition of A_L',
  },
  'chokes.field': (look, index) => ({
    says: 'Ampère’s law.',
    formula: 'N * I_ch / l_e',
    where: { N: 'row.turns', I_ch: 'row.direct', l_e: sizeOf(on(look, index), 'path') },
    source: 'Ampère’s law',
  }),
  'chokes.kept': (look, index) => {
    const former = on(look, index);
    return {
      says: 'Slope of a magnetisation curve of the shape of a hyperbolic tangent.',
      formula: '1 / cosh(mu_0 * mu_i * H_dc / B_s)^2',
      where: {
        mu_0: {
          value: 4e-7 * Math.PI,
          unit: 'H/m',
          says: 'permeability of the vacuum',
          source: 'CODATA',
        },
        mu_i: initial(former),
        H_dc: 'row.field',
        B_s: {
          value: former.ferrite.saturation,
          unit: 'T',
          says: `${former.ferrite.title}: flux at saturation`,
          source: former.ferrite.source,
        },
      },
      source: 'slope of B_s·tanh(μ₀μᵢH/B_s)',
      assumes: 'A planning figure: real curves bend earlier and saturate later.',
    };
  },
  'chokes.impedance': (look, index) => ({
    says: 'Reactance of the inductance, with the permeability that frequency and direct current leave.',
    formula: '2 * pi * f_0 * L_1 * m_f * m_dc',
    where: { f_0: nominal, L_1: 'row.inductance', ...kept(look, index), m_dc: 'row.kept' },
    source: 'closed form of an inductance',
  }),
  'chokes.times': {
    says: 'The choke’s impedance over the circuit’s.',
    formula: 'Z_1 / R_ch',
    where: { Z_1: 'row.impedance', R_ch: 'row.resistance' },
    source: 'definition',
  },
  'chokes.taken': (look, index) => ({
    says: 'The resistance that the core’s loss makes takes its share of the power.',
    formula: 'P_c * R_ch / R_w',
    where: {
      P_c: 'transmit.collectorPower',
      R_ch: 'row.resistance',
      f_0: nominal,
      L_1: 'row.inductance',
      mu_1: 'row.stores',
      mu_2: 'row.loses',
      mu_i: initial(on(look, index)),
      R_w: {
        formula: '2 * pi * f_0 * L_1 * (mu_1^2 + mu_2^2) / (mu_i * mu_2)',
        unit: 'Ω',
        says: 'loss of the core, across the choke',
      },
    },
    source: 'series turned into parallel, closed form; Ohm’s law',
    assumes: 'A steady tone; loss as at small signals.',
  }),
  'chokes.rise': (look, index) => warming(on(look, index)),
  'chokes.flux': (look, index) => ({
    says: 'Faraday’s law for a sine.',
    formula: 'V_1 / (sqrt(2) * pi * N * A_e * f_0)',
    where: {
      ...voltage,
      N: 'row.turns',
      A_e: sizeOf(on(look, index), 'area'),
      f_0: nominal,
    },
    source: 'Faraday’s law',
  }),
  'chokes.fluxLimit': guide(),
  'chokes.outcome': fluxOutcome(),
  'chokes.wire': rule('Thickest that fits in one layer, up to 0.5 mm.'),
  'chokes.bare': (look, index) => copperOf(look, 'chokes', index),
  'chokes.length': (look, index) =>
    cutOf(on(look, index), wireOf(look, 'chokes', index, 'overall'), 1, 'row.turns'),
  'chokes.build': rule('Turns and core of this row in one line.'),
  'chokes.ready': rule(
    `The least value of those at hand, else of the list, that has the inductance, resonates at ${CLEAR} times the operating frequency or above, and carries ${SPARE} times the current.`,
  ),
  'chokes.readyL': (look, index) => listed(look, index, 'l', 'H', 'L_r', 'as printed on it'),
  'chokes.readyResonance': (look, index) =>
    listed(look, index, 'resonance', 'Hz', 'f_r', 'its self-resonance'),
  'chokes.readyMost': (look, index) =>
    listed(look, index, 'most', 'A', 'I_r', 'most direct current'),
  'chokes.readyTimes': {
    says: 'Reactance with its own capacitance across it, over the circuit’s resistance.',
    formula: '2 * pi * f_0 * L_r / (1 - (f_0 / f_r)^2) / R_ch',
    where: {
      f_0: nominal,
      L_r: 'row.readyL',
      f_r: 'row.readyResonance',
      R_ch: 'row.resistance',
    },
    source: 'closed form of a resonance in parallel',
  },
};

const on = (look: Look, index: number) => rowFormer(look, 'chokes', index);
const at = (look: Look) => look('plan.nominal') as number;

const nameOf = (look: Look, index: number) =>
  (look('windings.chokes') as readonly { readonly label: string }[])[index]?.label;

/** Voltage at the collector at full power. */
const voltage: Record<string, Bound> = {
  P_c: 'transmit.collectorPower',
  R_ch: 'row.resistance',
  V_1: { formula: 'sqrt(P_c * R_ch)', unit: 'Vrms', says: 'voltage across it' },
};

function kept(look: Look, index: number): Record<string, Bound> {
  return {
    mu_1: 'row.stores',
    mu_2: 'row.loses',
    mu_i: initial(on(look, index)),
    m_f: { formula: 'sqrt(mu_1^2 + mu_2^2) / mu_i', unit: '1', says: 'permeability left' },
  };
}

function circuit(look: Look, index: number): Working {
  const name = nameOf(look, index);
  if (name === 'Supply choke') {
    return {
      says: 'A line’s worth: the rest of the supply is kept low by its capacitors.',
      formula: 'R',
      where: { R: { value: LINE, unit: 'Ω', says: 'taken for the supply line' } },
      source: 'common practice, no source',
    };
  }
  if (name === 'Collector choke' && look('transmit.finalForm') === 'pushPull') {
    return {
      says: 'Each side has a quarter of the load from collector to collector.',
      formula: 'R_c / 4',
      where: { R_c: 'transmit.collectorLoad' },
      source: 'closed form of the ideal transformer',
    };
  }
  const [path, symbol, says] =
    name === 'Base choke'
      ? ['transmit.finalInput', 'R_b', 'What the final’s base has.']
      : ['transmit.collectorLoad', 'R_c', 'The load that the final wants.'];
  return { says, formula: symbol, where: { [symbol]: path }, source: 'Transmit' };
}

function direct(look: Look, index: number): Working {
  const name = nameOf(look, index);
  if (name === 'Supply choke') {
    return {
      says: 'As entered.',
      formula: 'I_feed',
      where: { I_feed: 'windings.chokeFeed' },
      source: 'as typed, or typical',
    };
  }
  if (name === 'Collector choke') {
    const pair = look('transmit.finalForm') === 'pushPull';
    return {
      says: pair
        ? 'Half of the final’s current at full power.'
        : 'The final’s current at full power.',
      formula: pair ? 'I_dc / 2' : 'I_dc',
      where: { I_dc: 'transmit.dcCurrent' },
      source: 'Transmit',
    };
  }
  return {
    says: 'The final’s current over the current gain of a weak one.',
    formula: 'I_dc / h_min',
    where: {
      I_dc: 'transmit.dcCurrent',
      h_min: { value: WEAK_GAIN, unit: '1', says: 'current gain of a weak final' },
    },
    source: 'common practice, no source',
  };
}

function listed(
  look: Look,
  index: number,
  which: 'l' | 'resonance' | 'most',
  unit: 'H' | 'Hz' | 'A',
  symbol: string,
  says: string,
): Working {
  const rows = look('windings.chokes') as readonly {
    readonly ready: string | null;
    readonly readyL: number | null;
    readonly readyResonance: number | null;
    readonly readyMost: number | null;
  }[];
  const row = rows[index];
  if (row?.ready?.endsWith(AT_HAND)) {
    const own = { l: row.readyL, resonance: row.readyResonance, most: row.readyMost };
    return {
      says: 'From the list of chokes at hand.',
      formula: symbol,
      where: { [symbol]: { value: own[which] ?? 0, unit, says, source: 'as pasted' } },
      source: 'as pasted',
    };
  }
  const found = chokes.find(({ make, l }) => l === row?.readyL && row.ready?.endsWith(make));
  return {
    says: 'From the list of ready-made chokes.',
    formula: symbol,
    where: {
      [symbol]: { value: found?.[which] ?? 0, unit, says, source: found?.source ?? '' },
    },
    source: found?.source ?? '',
    assumes: 'Typical of its kind: see the sheet of the part in the hand.',
  };
}
