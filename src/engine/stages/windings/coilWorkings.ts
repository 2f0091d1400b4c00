import { ENAMEL, EPS0 } from '../../circuit/toroidCapacitance.ts';
import { riseFormula, riseSteps } from '../../circuit/winding/bunchedRise.ts';
import { SPREAD } from '../../circuit/winding/toroidCoil.ts';
import { COPPER, MU0, SKIN_SPLIT } from '../../circuit/wireLoss.ts';
import { type Core, cores } from '../../data/cores.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { Shelf, ShelfCoil } from '../cores/fields.ts';
import type { windingsFields } from './fields.ts';
import { CLOSE } from './shareFor.ts';

type Results = (typeof windingsFields)['results'];
type Keys =
  | `coils.${keyof Results['coils']['columns']}`
  | `spreads.${keyof Results['spreads']['columns']}`
  | `coresNeeded.${keyof Results['coresNeeded']['columns']}`;

const copper = {
  value: COPPER,
  unit: 'Ω·m',
  says: 'resistivity of copper at 20 °C',
  source: 'IEC 60028',
} as const;

export const coilWorkings: Pick<
  StageWorkings<typeof windingsFields>,
  Extract<keyof StageWorkings<typeof windingsFields>, Keys>
> = {
  'coils.label': rule('The coils of Output, and the carrier oscillator’s where it has one.'),
  'coils.core': rule(
    'The one asked for, or the smallest on which the turns fit in one layer of 0.3 mm wire with the flux below its guideline; mix 2 up to 10 MHz, mix 6 above.',
  ),
  'coils.place': rule(
    'Cores of the box are counted: each coil takes a piece, those of Output first.',
  ),
  'coils.l': wantedOf,
  'coils.al': (look, index) => tableAl(rowCore(look, 'coils', index)),
  'coils.turnsExact': {
    says: 'Inductance grows as the square of the turns.',
    formula: 'sqrt(L / A_L)',
    where: { L: 'row.l', A_L: 'row.al' },
    source: 'definition of A_L',
  },
  'coils.turns': (look, index) => {
    const wound = woundAt(look, index);
    return {
      says: wound
        ? 'Rounded to whole turns, as Output has it; of a trap before the last trimming.'
        : 'Rounded to whole turns.',
      formula: wound ? 'max(1, round(sqrt(L_d / A_L)))' : 'max(1, round(N_x))',
      where: wound
        ? {
            L_d: { value: wound.asked, unit: 'H', says: 'what Output winds it for' },
            A_L: 'row.al',
          }
        : { N_x: 'row.turnsExact' },
      source: 'one turn is one pass through the hole',
    };
  },
  'coils.lBelow': inductance('(N - 1)^2', 'One turn less.'),
  'coils.lAt': inductance('N^2', 'These turns.'),
  'coils.lAbove': inductance('(N + 1)^2', 'One turn more.'),
  'coils.lLow': (look, index) => tolerance(rowCore(look, 'coils', index), '-'),
  'coils.lHigh': (look, index) => tolerance(rowCore(look, 'coils', index), '+'),
  'coils.lBunched': (look, index) => ({
    says: 'The ring leaks flux where no turns are: close together the turns share more of it.',
    formula: `L_N * ${riseFormula('min(c_w, c_0)')} / ${riseFormula('c_0')}`,
    where: { L_N: 'row.lAt', c_w: 'row.coverage', ...risen(rowCore(look, 'coils', index)) },
    source:
      'this program’s own model: the ring as a line for flux, leaking like a thin ring’s charge',
    assumes: 'Within a half of the rise. A builder’s ten turns rose by 67 %, from 0.46 to 0.77 µH.',
  }),
  'coils.share': (look, index) => shareWorking(look, index),
  'coils.dip': {
    says: 'The inductance wanted, with the capacitor and what the coil has itself.',
    formula: '1 / (2 * pi * sqrt(L * (C_t + C_s)))',
    where: { L: 'row.l', C_t: 'windings.testCapacitor', C_s: 'row.selfCapacitance' },
    source: 'Thomson’s formula',
  },
  'coils.own': (look, index) => {
    const rows = (look('output.coils') ?? []) as readonly { readonly own: number | null }[];
    return {
      says: 'As measured.',
      formula: 'L_m',
      where: {
        L_m: { value: rows[index]?.own ?? 0, unit: 'H', says: 'typed on the Network leaf' },
      },
      source: 'as measured',
    };
  },
  'coils.advice': rule(
    'By the measured inductance against the wanted one, and what one turn does.',
  ),
  'coils.off': {
    says: 'What whole turns miss.',
    formula: 'L_N / L - 1',
    where: { L_N: 'row.lAt', L: 'row.l' },
    source: 'definition',
  },
  'coils.wire': rule(
    'The one asked for, or the thickest that fits in one layer, up to 0.8 mm: thicker is too stiff.',
  ),
  'coils.bare': wireFigure('bare', 'd_w', 'copper of this wire'),
  'coils.overall': wireFigure('overall', 'd_o', 'this wire over its enamel'),
  'coils.thickest': (look, index) => ({
    says: 'The wires’ centres lie on a circle one wire smaller than the hole, each touching the next; 30° stay free.',
    formula: 'D * s / (1 + s)',
    where: {
      D: dimension(rowCore(look, 'coils', index), 'inner'),
      N: 'row.turns',
      s: {
        formula: 'N < 2 ? 1 : sin(pi * 11 / 12 / N)',
        unit: '1',
        says: 'half the angle between neighbours, its sine',
      },
    },
    source: 'geometry',
  }),
  'coils.fits': {
    says: 'The wire over its enamel against the thickest that fits.',
    formula: 'd_o <= d_max ? "fits" : "crowded"',
    where: { d_o: 'row.overall', d_max: 'row.thickest' },
    source: 'geometry',
  },
  'coils.coverage': (look, index) => ({
    says: 'Each touching turn takes the same angle as seen from the centre.',
    formula: 'N * asin(min(1, d_o / (D - d_o))) / pi',
    where: {
      N: 'row.turns',
      d_o: 'row.overall',
      D: dimension(rowCore(look, 'coils', index), 'inner'),
    },
    source: 'geometry',
  }),
  'coils.length': (look, index) => lengthOf(rowCore(look, 'coils', index), 'row.overall'),
  'coils.resistanceDc': {
    says: 'Length over section.',
    formula: 'rho * l_w / (pi / 4 * d_w^2)',
    where: { rho: copper, l_w: 'row.length', d_w: 'row.bare' },
    source: 'IEC 60028',
  },
  'coils.resistance': (look, index) => resistance(rowCore(look, 'coils', index)),
  'coils.q': (look, index) => ({
    says: 'Losses of wire and core add.',
    formula: '1 / (R_ac / (2 * pi * f_0 * L_N) + 1 / Q_core)',
    where: {
      R_ac: 'row.resistance',
      f_0: 'plan.nominal',
      L_N: 'row.lAt',
      Q_core: {
        value: rowCore(look, 'coils', index).mix.coreQ ?? 1,
        unit: '1',
        says: 'Q of the core alone',
        source: 'typical figure, from memory',
      },
    },
    source: 'definition of Q',
    assumes: 'The core’s Q is a typical figure: the whole is right within a third.',
  }),
  'coils.selfCapacitance': (look, index) => ({
    says: 'From turn to turn and to the core, of touching turns.',
    formula: '1.366 * eps_0 * l_1 * (eps_r * theta / k_d + 1 / tan(theta / 2) - 1 / tan(pi / 12))',
    where: {
      ...turnLength(rowCore(look, 'coils', index), 'row.overall'),
      d_w: 'row.bare',
      eps_0: { value: EPS0, unit: 'F/m', says: 'permittivity of the vacuum', source: 'CODATA' },
      eps_r: { value: ENAMEL, unit: '1', says: 'of the enamel', source: 'from memory' },
      l_1: { formula: TURN, unit: 'm', says: 'length of one turn' },
      k_d: { formula: 'log(d_o / d_w)', unit: '1', says: 'logarithm of the diameters' },
      theta: { formula: 'acos(1 - k_d / eps_r)', unit: '1', says: 'angle of the near field' },
    },
    source: 'Massarini & Kazimierczuk, IEEE Trans. Power Electronics 12, 1997 (from memory)',
    assumes: 'Turns touch, the core conducts: an upper estimate.',
  }),
  'coils.resonance': {
    says: 'Where inductance and self-capacitance resonate.',
    formula: '1 / (2 * pi * sqrt(L_N * C_s))',
    where: { L_N: 'row.lAt', C_s: 'row.selfCapacitance' },
    source: 'Thomson’s formula',
  },
  'coils.flux': (look, index) => ({
    says: 'Faraday’s law for a sine: often written E/(4.44 N A f) with E in volts rms.',
    formula: 'V_x / (2 * pi * N * A_e * f_0)',
    where: {
      V_x: {
        value:
          (look('output.coils') as readonly { readonly voltage: number }[])[index]?.voltage ?? 0,
        unit: 'Vpk',
        says: 'across this coil, from Output',
      },
      N: 'row.turns',
      A_e: section(rowCore(look, 'coils', index)),
      f_0: 'plan.nominal',
    },
    source: 'Faraday’s law',
  }),
  'coils.fluxLimit': guide(),
  'coils.outcome': fluxOutcome(),
  'spreads.label': rule('All round but for the gap, touching, and half-way between.'),
  'spreads.share': (look, index) => ({
    says: 'All but 30°, what touching turns take, or the middle of both.',
    formula: ['c_0', '(c_0 + c_w) / 2', 'c_w'][index] ?? 'c_0',
    where: firstCoil(look),
    source: 'geometry',
  }),
  'spreads.l': (look) => ({
    says: 'The ring leaks flux where no turns are: close together the turns share more of it.',
    formula: `L_N * ${riseFormula('c_s')} / ${riseFormula('c_0')}`,
    where: { c_s: 'row.share', ...firstCoil(look), ...risen(rowCore(look, 'coils', 0)) },
    source:
      'this program’s own model: the ring as a line for flux, leaking like a thin ring’s charge',
    assumes: 'Within a half of the rise.',
  }),
  'spreads.rise': (look) => ({
    says: 'Against the same turns spread out.',
    formula: 'L_s / L_N - 1',
    where: { L_s: 'row.l', ...firstCoil(look) },
    source: 'definition',
  }),
  'coresNeeded.core': rule('Each kind of core once, in the order of the windings.'),
  'coresNeeded.goes': rule('The windings on this core.'),
  'coresNeeded.needed': (look, index) => neededWorking(look, index, 'needed'),
  'coresNeeded.boxed': (look, index) => neededWorking(look, index, 'boxed'),
  'coresNeeded.toGet': {
    says: 'What the box lacks.',
    formula: 'max(0, n_n - n_b)',
    where: { n_n: 'row.needed', n_b: 'row.boxed' },
    source: 'counting',
  },
  'coils.build': rule('Turns, wire and core of this row in one line.'),
};

/** The inductance that Output or Carrier asks for. */
export function wantedOf(look: Look, index: number): Working {
  const fromOutput = index < ((look('output.coils') as readonly unknown[] | null)?.length ?? 0);
  const rows = look('output.coils') as readonly { readonly l: number }[] | null;
  return fromOutput
    ? {
        says: 'As Output asks for it.',
        formula: 'L',
        where: { L: { value: rows?.[index]?.l ?? 0, unit: 'H', says: 'this coil in Output' } },
        source: 'Output',
      }
    : {
        says: 'As Carrier asks for it.',
        formula: 'L_ser',
        where: { L_ser: 'carrier.seriesL' },
        source: 'Carrier',
      };
}

/** Length of one turn round the core’s section, half a wire off it. */
const TURN = '2 * h + D_a - D + pi * d_o';

/** A name or sentence that no arithmetic leads to. */
export function rule(says: string): Working {
  return { says, rule: says, where: {}, source: 'this program’s own rule' };
}

/** The core named in a row of a table: of the box, or of the list. */
export function rowCore(look: Look, table: 'coils' | 'transformers', index: number): Core {
  const rows = look(`windings.${table}`) as readonly { readonly core: string }[];
  const shelf = look('cores.shelf') as Shelf | null;
  const found = [...(shelf?.row ?? []), ...cores].find(({ title }) => title === rows[index]?.core);
  return found ?? (cores[0] as Core);
}

/** The coil of a row as Output has wound it; undefined for coils that Output doesn't know. */
function woundAt(look: Look, index: number): ShelfCoil | undefined {
  const { label } = rowAt(look, index);
  const wound = (look('output.wound') ?? []) as readonly { label: string; wound: ShelfCoil }[];
  return wound.find((one) => one.label === label)?.wound;
}

const rowAt = (look: Look, index: number) =>
  (
    look('windings.coils') as readonly {
      readonly label: string;
      readonly l: number;
      readonly lAt: number;
      readonly coverage: number;
      readonly share: number;
    }[]
  )[index] ?? { label: '', l: 0, lAt: 1, coverage: 0, share: 0 };

/** What the rise by squeezing is made of. */
function risen(core: Core): Record<string, Bound> {
  const { size, mix } = core;
  const nominal = 'maker’s nominal figures, from memory';
  return {
    mu_i: { value: mix.permeability, unit: '1', says: `${core.title}: permeability` },
    A_e: section(core),
    l_e: { value: size.path, unit: 'm', says: `${core.title}: magnetic path`, source: nominal },
    D_a: dimension(core, 'outer'),
    D: dimension(core, 'inner'),
    c_0: { value: SPREAD, unit: '1', says: 'spread, a gap of 30° left' },
    ...riseSteps,
  };
}

/** Figures of the first coil, for which spreading is shown. */
function firstCoil(look: Look): Record<string, Bound> {
  const { lAt, coverage } = rowAt(look, 0);
  return {
    L_N: { value: lAt, unit: 'H', says: 'the first coil, spread out' },
    c_w: { value: coverage, unit: '%', says: 'the first coil: covered when wound tight' },
    c_0: { value: SPREAD, unit: '1', says: 'spread, a gap of 30° left' },
  };
}

/** A count over the windings, or over the lines of the box. */
function neededWorking(look: Look, index: number, which: 'needed' | 'boxed'): Working {
  const rows = (look('windings.coresNeeded') ?? []) as readonly Record<typeof which, number>[];
  return {
    says: which === 'needed' ? 'Counted over all windings.' : 'Counted over the lines of the box.',
    formula: 'n_c',
    where: {
      n_c: {
        value: rows[index]?.[which] ?? 0,
        unit: '1',
        says: which === 'needed' ? 'windings on this core' : 'pieces listed',
      },
    },
    source: 'counting',
  };
}

/** How far the turns are to be spread: found by halving where neither end of the way will do. */
function shareWorking(look: Look, index: number): Working {
  const { l, lAt, coverage, share } = rowAt(look, index);
  const core = rowCore(look, 'coils', index);
  const source = 'this program’s own model of squeezed turns';
  if (l / lAt <= 1 + CLOSE || coverage >= SPREAD) {
    return {
      says: 'Spread as far as it goes: the turns give enough, or fill the core.',
      formula: 'c_0',
      where: { c_0: { value: SPREAD, unit: '1', says: 'eleven twelfths, a gap of 30° left' } },
      source: 'common practice, no source',
    };
  }
  if (share === coverage) {
    return {
      says: 'All pushed together, and still a little short.',
      formula: 'c_w',
      where: { c_w: 'row.coverage' },
      source,
    };
  }
  return {
    says: 'So close that a core of nominal factor makes what is wanted.',
    left: `L_N * ${riseFormula('c_x')} / ${riseFormula('c_0')}`,
    right: 'L',
    root: 'c_x',
    where: { c_x: 'row.share', L_N: 'row.lAt', L: 'row.l', ...risen(core) },
    source,
    assumes: 'A core on its nominal factor. The meter decides.',
  };
}

/** A_L as the table of cores has it. */
export function tableAl(core: Core): Working {
  return {
    says: 'From the table of cores.',
    formula: 'A_L',
    where: { A_L: { value: core.al, unit: 'H/t²', says: core.title, source: core.source } },
    source: core.source,
    assumes: `Within ±${Math.round(100 * core.mix.tolerance)} %.`,
  };
}

/** A dimension of a core as a constant. */
export function dimension(core: Core, which: 'outer' | 'inner' | 'height'): Bound {
  const says = { outer: 'outer diameter', inner: 'diameter of the hole', height: 'height' }[which];
  return {
    value: core.size[which],
    unit: 'm',
    says: `${core.title}: ${says}`,
    source: 'maker’s nominal dimensions, from memory',
  };
}

/** A core's cross section as a constant. */
export function section(core: Core): Bound {
  return {
    value: core.size.area,
    unit: 'm²',
    says: `${core.title}: cross section`,
    source: 'maker’s nominal dimensions, from memory',
  };
}

function turnLength(core: Core, overall: Bound): Record<string, Bound> {
  return {
    h: dimension(core, 'height'),
    D_a: dimension(core, 'outer'),
    D: dimension(core, 'inner'),
    d_o: overall,
  };
}

/** Wire of a winding, tails included. */
export function lengthOf(core: Core, overall: Bound, turns = 'row.turns'): Working {
  return {
    says: 'Each turn goes once round the core’s section; a tail at each end.',
    formula: `N * (${TURN}) + 2 * l_t`,
    where: { ...turnLength(core, overall), N: turns, l_t: 'cores.tail' },
    source: 'geometry',
  };
}

/** The makers' guideline for the flux. */
export function guide(): Working {
  return {
    says: 'The flux at which a core stays cool falls as the root of the frequency.',
    formula: 'B_1 / sqrt(f_0 / f_1)',
    where: {
      B_1: { value: 15e-3, unit: 'T', says: '150 G, the guideline at 1 MHz' },
      f_0: 'plan.nominal',
      f_1: { value: 1e6, unit: 'Hz', says: 'one megahertz' },
    },
    source: 'makers’ guideline, from memory; 57 G at 7 MHz',
  };
}

/** Flux against the guideline, as a formula. */
export function fluxOutcome(): Working {
  return {
    says: 'Holds up to 80 % of the guideline, close up to all of it.',
    formula: 'B_pk <= 0.8 * B_lim ? "holds" : B_pk <= B_lim ? "close" : "fails"',
    where: { B_pk: 'row.flux', B_lim: 'row.fluxLimit' },
    source: 'this program’s own scale',
  };
}

/** What the core's tolerance makes of these turns. */
function tolerance(core: Core, sign: '+' | '-'): Working {
  return {
    says: 'The core’s own tolerance; the turns are whole.',
    formula: `L_N * (1 ${sign} t_A)`,
    where: {
      L_N: 'row.lAt',
      t_A: { value: core.mix.tolerance, unit: '1', says: 'tolerance of A_L', source: core.source },
    },
    source: core.source,
  };
}

function inductance(square: string, says: string): Working {
  return {
    says,
    formula: `A_L * ${square}`,
    where: { A_L: 'row.al', N: 'row.turns' },
    source: 'definition of A_L',
    assumes: 'Turns spread over the core but for the gap.',
  };
}

function wireFigure(column: 'bare' | 'overall', symbol: string, says: string) {
  return (look: Look, index: number): Working => {
    const rows = look('windings.coils') as readonly Record<string, number>[];
    const value = rows[index]?.[column] ?? 0;
    const source = 'IEC 60317-0-1 or ASTM B258, from memory';
    return {
      says: 'From the table of wires.',
      formula: symbol,
      where: { [symbol]: { value, unit: 'm', says, source } },
      source,
    };
  };
}

function resistance(core: Core): Working {
  return {
    says: 'Current keeps to the skin of the wire, and neighbouring turns crowd it further.',
    formula: 'R_dc * k_skin * k_near',
    where: {
      R_dc: 'row.resistanceDc',
      d_w: 'row.bare',
      N: 'row.turns',
      f_0: 'plan.nominal',
      rho: copper,
      mu_0: { value: MU0, unit: 'H/m', says: 'permeability of the vacuum', source: 'CODATA' },
      D: dimension(core, 'inner'),
      D_a: dimension(core, 'outer'),
      delta: { formula: 'sqrt(rho / (pi * f_0 * mu_0))', unit: 'm', says: 'skin depth' },
      x: { formula: 'd_w / 2 / delta', unit: '1', says: 'radius in skin depths' },
      k_skin: {
        formula: `x < ${SKIN_SPLIT} ? 1 + x^4 / (48 + 0.7 * x^4) : x / 2 + 0.25 + 3 / (32 * x)`,
        unit: '1',
        says: 'rise by the skin effect',
      },
      s: {
        formula: 'min(1, N * d_w / (pi * (D_a + D) / 2 * (11 / 12)))',
        unit: '1',
        says: 'copper over mean pitch',
      },
      k_near: {
        formula: '1 + 2.4 * s^1.4',
        unit: '1',
        says: 'rise by the neighbouring turns',
      },
    },
    source:
      'asymptotic series of the skin effect; Medhurst, Wireless Engineer, 1947, long coils (from memory)',
    assumes: 'A round wire at 20 °C; a fit within 5 % of Medhurst’s column.',
  };
}
