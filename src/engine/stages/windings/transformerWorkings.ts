import { TURNS_TOLERANCE } from '../../circuit/turnsRatio.ts';
import { wires } from '../../data/wires.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import { fluxOutcome, guide, lengthOf, rowCore, rule, section, tableAl } from './coilWorkings.ts';
import type { windingsFields } from './fields.ts';

type Keys = `transformers.${keyof (typeof windingsFields)['results']['transformers']['columns']}`;

export const transformerWorkings: Pick<
  StageWorkings<typeof windingsFields>,
  Extract<keyof StageWorkings<typeof windingsFields>, Keys>
> = {
  'transformers.label': rule(
    'Output transformer, collector choke, modulator, then those between the stages.',
  ),
  'transformers.core': rule(
    'The one asked for; else mix 61 by the power (up to 1 W half an inch less, up to 5 W half an inch, more above) and FT37-43 for small signals.',
  ),
  'transformers.first': (look, index) => impedance(look, index, 'first'),
  'transformers.second': (look, index) => impedance(look, index, 'second'),
  'transformers.al': (look, index) => tableAl(rowCore(look, 'transformers', index)),
  'transformers.permeability': (look, index) => {
    const { mix, title } = rowCore(look, 'transformers', index);
    return {
      says: 'A ferrite’s permeability falls off above its relaxation frequency.',
      formula: 'abs(1 + (mu_i - 1) / (1 + i * f_0 / f_rel)) / mu_i',
      where: permeabilityWhere(mix.permeability, mix.relaxation ?? 0, title),
      source: 'Debye’s relaxation; Snoek, 1947; frequency from memory',
      assumes: 'One relaxation, its frequency within 30 %.',
    };
  },
  'transformers.turnsExact': (look, index) => ({
    says: 'Turns whose impedance is so many times the circuit’s, on the winding with fewer.',
    formula: 'sqrt(k_X * R_1 / (2 * pi * f_0 * A_L * m_f)) * n_few',
    where: {
      k_X: 'windings.reactanceTimes',
      R_1: 'row.first',
      f_0: 'plan.nominal',
      A_L: 'row.al',
      m_f: 'row.permeability',
      ...fewer(look, index),
    },
    source: 'closed form of an inductance; factor: common practice',
  }),
  'transformers.turnsFlux': (look, index) => ({
    says: 'Faraday’s law solved for the turns at the guideline’s flux, on the winding with fewer.',
    formula: 'V_1 / (sqrt(2) * pi * A_e * f_0 * B_lim) * n_few',
    where: {
      ...collectorVoltage,
      A_e: section(rowCore(look, 'transformers', index)),
      f_0: 'plan.nominal',
      B_lim: 'row.fluxLimit',
      ...fewer(look, index),
    },
    source: 'Faraday’s law',
  }),
  'transformers.turns': (look, index) => turns(look, index, 'first'),
  'transformers.secondTurns': (look, index) => turns(look, index, 'second'),
  'transformers.inductance': {
    says: 'A_L times the square of the turns.',
    formula: 'A_L * N^2',
    where: { A_L: 'row.al', N: 'row.turns' },
    source: 'definition of A_L',
  },
  'transformers.impedance': {
    says: 'Reactance of the inductance, with the permeability that is left.',
    formula: '2 * pi * f_0 * L_1 * m_f',
    where: { f_0: 'plan.nominal', L_1: 'row.inductance', m_f: 'row.permeability' },
    source: 'closed form of an inductance',
  },
  'transformers.times': {
    says: 'The winding’s impedance over the circuit’s.',
    formula: 'Z_1 / R_1',
    where: { Z_1: 'row.impedance', R_1: 'row.first' },
    source: 'definition',
  },
  'transformers.loss': (look, index) => {
    const { mix, title } = rowCore(look, 'transformers', index);
    return {
      says: 'The winding lies across source and load: it throws back by μ′ and takes by μ″.',
      formula:
        '20 * log10(abs(1 + R_1 / (2 * i * 2 * pi * f_0 * L_1 * (1 + (mu_i - 1) / (1 + i * f_0 / f_rel)) / mu_i)))',
      where: {
        R_1: 'row.first',
        L_1: 'row.inductance',
        ...permeabilityWhere(mix.permeability, mix.relaxation ?? 0, title),
      },
      source: 'closed form: a shunt impedance between equal resistances',
      assumes: 'Source and load are equal; leakage and copper are left out.',
    };
  },
  'transformers.wire': rule('Thickest that fits with all windings in one layer, up to 0.5 mm.'),
  'transformers.bare': (look, index) => ({
    says: 'From the table of wires.',
    formula: 'd_w',
    where: { d_w: wireFigure(look, index, 'bare', 'copper of this wire') },
    source: wireSource,
  }),
  'transformers.length': (look, index) =>
    lengthOf(
      rowCore(look, 'transformers', index),
      wireFigure(look, index, 'overall', 'this wire over its enamel'),
    ),
  'transformers.secondLength': (look, index) =>
    lengthOf(
      rowCore(look, 'transformers', index),
      wireFigure(look, index, 'overall', 'three wires over their enamel: it lies on the first', 3),
      'row.secondTurns',
    ),
  'transformers.flux': (look, index) => ({
    says: 'Faraday’s law for a sine.',
    formula: 'V_1 / (sqrt(2) * pi * N * A_e * f_0)',
    where: {
      ...collectorVoltage,
      N: 'row.turns',
      A_e: section(rowCore(look, 'transformers', index)),
      f_0: 'plan.nominal',
    },
    source: 'Faraday’s law',
  }),
  'transformers.fluxLimit': guide(),
  'transformers.outcome': fluxOutcome(),
  'transformers.build': rule('Turns and core of this row in one line.'),
};

const wireSource = 'IEC 60317-0-1 or ASTM B258, from memory';

/** A diameter of the wire named in a row. */
function wireFigure(
  look: Look,
  index: number,
  which: 'bare' | 'overall',
  says: string,
  times = 1,
): Bound {
  const rows = look('windings.transformers') as readonly { readonly wire: string }[];
  const wire = wires.find(({ title }) => title === rows[index]?.wire);
  return { value: times * (wire?.[which] ?? 0), unit: 'm', says, source: wireSource };
}

/** Voltage across the first winding at full power: that of the collector. */
const collectorVoltage: Record<string, Bound> = {
  P_c: 'transmit.collectorPower',
  R_c: 'transmit.collectorLoad',
  V_1: { formula: 'sqrt(P_c * R_c)', unit: 'Vrms', says: 'voltage at the collector' },
};

function permeabilityWhere(
  initial: number,
  relaxation: number,
  title: string,
): Record<string, Bound> {
  return {
    mu_i: { value: initial, unit: '1', says: `${title}: initial permeability` },
    f_rel: {
      value: relaxation,
      unit: 'Hz',
      says: `${title}: relaxation frequency`,
      source: 'from memory, ±30 %',
    },
    f_0: 'plan.nominal',
  };
}

/** Which of the transformers this row is. */
function kindAt(look: Look, index: number): 'output' | 'choke' | 'trifilar' | number {
  const rows = look('windings.transformers') as readonly { readonly label: string }[];
  const labels = rows.map(({ label }) => label);
  if (labels[index] === 'Output transformer') return 'output';
  if (labels[index] === 'Collector choke') return 'choke';
  const modulator = labels.indexOf('Modulator');
  return index === modulator ? 'trifilar' : index - modulator - 1;
}

function coupling(look: Look, place: number) {
  const rows = look('transmit.couplings') as readonly {
    readonly collector: number;
    readonly following: number;
    readonly turns: number;
  }[];
  return rows[place];
}

function impedance(look: Look, index: number, side: 'first' | 'second'): Working {
  const kind = kindAt(look, index);
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
  if (kind === 'output' && side === 'second') {
    return is('plan.antenna', 'R_ant', 'The output network and the antenna behind it.');
  }
  if (kind === 'output' || kind === 'choke') {
    return is('transmit.collectorLoad', 'R_c', 'The load that the final wants.');
  }
  const row = coupling(look, kind);
  const value = (side === 'first' ? row?.collector : row?.following) ?? 0;
  return {
    says: 'As Transmit’s table of transformers has it.',
    formula: 'R',
    where: { R: { value, unit: 'Ω', says: 'this side, from Transmit' } },
    source: 'Transmit',
  };
}

/** Turns of the first winding over the second, as a symbol with what it needs. */
function ratio(look: Look, index: number): { symbol: string; where: Record<string, Bound> } {
  const kind = kindAt(look, index);
  if (kind === 'output') {
    return {
      symbol: 'r_12',
      where: {
        n_t: 'output.transformerRatio',
        r_12: { formula: '1 / n_t', unit: '1', says: 'turns, first over second' },
      },
    };
  }
  if (kind === 'choke' || kind === 'trifilar') return { symbol: '1', where: {} };
  return {
    symbol: 'r_12',
    where: {
      r_12: {
        value: coupling(look, kind)?.turns ?? 1,
        unit: '1',
        says: 'turns, first over second, from Transmit',
      },
    },
  };
}

/** `n_few`: turns of the smaller winding over the first. */
function fewer(look: Look, index: number): Record<string, Bound> {
  const { symbol, where } = ratio(look, index);
  if (symbol === '1') {
    return { n_few: { value: 1, unit: '1', says: 'all windings have the same turns' } };
  }
  return {
    ...where,
    n_few: { formula: `min(1, 1 / ${symbol})`, unit: '1', says: 'smaller winding over first' },
  };
}

function turns(look: Look, index: number, side: 'first' | 'second'): Working {
  const kind = kindAt(look, index);
  const powered = kind === 'output' || kind === 'choke';
  const least: Record<string, Bound> = powered
    ? { N_x: 'row.turnsExact', N_B: 'row.turnsFlux' }
    : { N_x: 'row.turnsExact' };
  const most = powered ? 'max(N_x, N_B)' : 'N_x';
  least.N_min = {
    formula: `max(1, ceil(${most}))`,
    unit: 'turns',
    says: 'whole turns that suffice on the smaller winding',
  };
  const asked = look('windings.modulatorTurns');
  if (kind === 'trifilar' && asked !== null) {
    return {
      says: 'As you want them.',
      formula: 'N',
      where: { N: 'windings.modulatorTurns' },
      source: 'as typed',
    };
  }
  if (kind === 'choke' || kind === 'trifilar') {
    return {
      says: 'The next whole turn that suffices.',
      formula: 'N_min',
      where: least,
      source: 'one turn is one pass through the hole',
    };
  }
  if (kind === 'output' && look('output.transformerPrimary') !== null) {
    return {
      says: 'Both numbers of the ratio are multiplied until the smaller winding suffices.',
      formula: `ceil(N_min / min(N_p, N_s)) * ${side === 'first' ? 'N_p' : 'N_s'}`,
      where: { ...least, N_p: 'output.transformerPrimary', N_s: 'output.transformerSecondary' },
      source: 'closed form of the ideal transformer',
    };
  }
  return grown(look, index, side, least);
}

/** The smaller winding grows until the ratio is met in whole turns. */
function grown(
  look: Look,
  index: number,
  side: 'first' | 'second',
  least: Record<string, Bound>,
): Working {
  const rows = look('windings.transformers') as readonly {
    readonly turns: number;
    readonly secondTurns: number;
    readonly turnsExact: number;
    readonly turnsFlux: number | null;
  }[];
  const row = rows[index];
  const { where } = ratio(look, index);
  const few = Math.min(row?.turns ?? 1, row?.secondTurns ?? 1);
  const start = Math.max(1, Math.ceil(Math.max(row?.turnsExact ?? 1, row?.turnsFlux ?? 0)));
  const tries = Array.from({ length: Math.max(0, few - start) }, (_, k) => {
    const n = `(N_min + ${k})`;
    return `abs(round(${n} * n_s) / (${n} * n_s) - 1) <= t_n ? ${n} : `;
  }).join('');
  const found = `(${tries}N_min + ${Math.max(0, few - start)})`;
  const firstIsMany = (row?.turns ?? 1) >= (row?.secondTurns ?? 1);
  const wantsMany = (side === 'first') === firstIsMany;
  return {
    says: `The smaller winding grows from the least that suffices until whole turns meet the ratio within ${100 * TURNS_TOLERANCE} %.`,
    formula: wantsMany ? `round(${found} * n_s)` : found,
    where: {
      ...least,
      ...where,
      n_s: { formula: 'max(r_12, 1 / r_12)', unit: '1', says: 'ratio, larger over smaller' },
      t_n: { value: TURNS_TOLERANCE, unit: '1', says: 'how far whole turns may be off' },
    },
    source: 'closed form of the ideal transformer',
  };
}
