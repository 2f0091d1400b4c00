import { ENAMEL, EPS0 } from '../../circuit/toroidCapacitance.ts';
import {
  airCapacitanceFormula,
  airLossSteps,
  airResistanceFormula,
  airShape,
  lorenzFormula,
  lorenzSteps,
} from '../../circuit/winding/airCoilFormula.ts';
import {
  capacitanceFormula,
  capacitanceSteps,
  coilQFormula,
  coilSteps,
} from '../../circuit/winding/toroidCoilFormula.ts';
import { COPPER, MU0 } from '../../circuit/wireLoss.ts';
import { type Core, cores } from '../../data/cores.ts';
import { type Wire, wires } from '../../data/wires.ts';
import type { Bound, Look, StageWorkings, Working } from '../../fields/workings.ts';
import type { ShelfCoil } from '../cores/fields.ts';
import { type ElementRow, elementsOf, symbolOf } from './chainFormula.ts';
import type { outputFields } from './fields.ts';

type Keys = `asWound.${keyof (typeof outputFields)['results']['asWound']['columns']}`;

interface Row {
  readonly label: string;
  readonly core: string;
  readonly wire: string;
}

export const woundWorkings: Pick<
  StageWorkings<typeof outputFields>,
  Extract<keyof StageWorkings<typeof outputFields>, Keys>
> = {
  'asWound.label': named('The coils among the parts.'),
  'asWound.core': named(
    'The one asked for; else the smallest, of the box or from T37 up, on which the turns fit in one layer of 0.3 mm wire with the flux below its guideline; mix 2 up to 10 MHz, mix 6 above.',
  ),
  'asWound.wire': named('The one asked for, or the thickest that fits in one layer, up to 0.8 mm.'),
  'asWound.turnsOnAir': (look, index) => ({
    says: 'At so many turns the exact current sheet has the inductance wanted.',
    left: lorenzFormula,
    right: 'L_d',
    root: 'N_a',
    where: { N_a: 'row.turnsOnAir', L_d: askedFor(look, index), ...onAir, ...lorenzSteps },
    source: 'Lorenz, 1879; Nagaoka, 1909; elliptic integrals by Abramowitz & Stegun, 17.6',
  }),
  'asWound.turns': (look, index) => ({
    says: 'Inductance grows as the square of the turns, which are whole.',
    formula: 'max(1, round(sqrt(L_d / A_L)))',
    where: {
      L_d: askedFor(look, index),
      A_L: alOf(coreOf(look, index)),
    },
    source: 'definition of A_L',
  }),
  'asWound.lWound': (look, index) => (airOf(look, index) === null ? ofTurns(look, index) : ofSheet),
  'asWound.q': (look, index) =>
    look('output.coilQ') === null ? qAsWound(look, index) : typed('Q_L', 'output.coilQ'),
  'asWound.own': (look, index) =>
    look('output.selfCapacitance') === null
      ? capacitanceAsWound(look, index)
      : typed('C_t', 'output.selfCapacitance'),
  'asWound.notch': (look, index) => notch(look, index),
};

const ofTurns = (look: Look, index: number): Working => ({
  says: 'What these turns give, spread evenly.',
  formula: 'A_L * N^2',
  where: { A_L: alOf(coreOf(look, index)), N: 'row.turns' },
  source: 'definition of A_L',
});

const mu0 = {
  value: MU0,
  unit: 'H/m',
  says: 'permeability of the vacuum',
  source: 'CODATA',
} as const;

const copper = {
  value: COPPER,
  unit: 'Ω·m',
  says: 'resistivity of copper at 20 °C',
  source: 'IEC 60028',
} as const;

/** Shape of a coil on air, from its turns. */
const onAir: Record<string, Bound> = {
  D_f: 'cores.former',
  d_a: 'cores.airWire',
  p_a: 'cores.airPitch',
  mu_0: mu0,
  ...airShape,
};

const ofSheet: Working = {
  says: 'The exact current sheet at these turns.',
  formula: lorenzFormula,
  where: { N_a: 'row.turnsOnAir', ...onAir, ...lorenzSteps },
  source: 'Lorenz, 1879; Nagaoka, 1909; elliptic integrals by Abramowitz & Stegun, 17.6',
};

function named(says: string): Working {
  return { says, rule: says, where: {}, source: 'this program’s own rule' };
}

const typed = (symbol: string, path: string): Working => ({
  says: 'As typed.',
  formula: symbol,
  where: { [symbol]: path },
  source: 'as typed',
});

function qAsWound(look: Look, index: number): Working {
  const air = airOf(look, index);
  if (air !== null) {
    return {
      says: 'Reactance over the wire’s resistance.',
      formula: `2 * pi * f_0 * L_d / (${airResistanceFormula})`,
      where: {
        L_d: askedFor(look, index),
        N_a: 'row.turnsOnAir',
        ...onAir,
        l_t: 'cores.tail',
        f_0: 'plan.nominal',
        rho: copper,
        ...airLossSteps(air.form.spacing, air.long / air.diameter),
      },
      source: 'skin effect: asymptotic series; neighbours: Medhurst, 1947 (from memory)',
    };
  }
  const core = coreOf(look, index);
  return {
    says: 'Losses of wire and core add.',
    formula: coilQFormula,
    where: {
      N: 'row.turns',
      A_L: alOf(core),
      ...dimensions(core, wireOf(look, index)),
      l_t: 'cores.tail',
      f_0: 'plan.nominal',
      rho: copper,
      mu_0: mu0,
      Q_core: {
        value: core.mix.coreQ ?? 1,
        unit: '1',
        says: 'Q of the core alone',
        source: 'typical figure, from memory',
      },
      ...coilSteps,
    },
    source:
      'asymptotic series of the skin effect; Medhurst, Wireless Engineer, 1947, long coils (from memory)',
    assumes: 'The core’s Q is a typical figure: the whole is right within a third.',
  };
}

function capacitanceAsWound(look: Look, index: number): Working {
  if (airOf(look, index) !== null) {
    return {
      says: 'Medhurst’s measurements, one end at ground.',
      formula: airCapacitanceFormula,
      where: {
        N_a: 'row.turnsOnAir',
        ...onAir,
        c_1: { value: 1e-10, unit: 'F/m', says: 'one picofarad for each centimetre' },
      },
      source: 'Medhurst, Wireless Engineer, 1947, fitted formula (from memory)',
    };
  }
  return {
    says: 'From turn to turn and to the core, of touching turns.',
    formula: capacitanceFormula,
    where: {
      ...dimensions(coreOf(look, index), wireOf(look, index)),
      eps_0: { value: EPS0, unit: 'F/m', says: 'permittivity of the vacuum', source: 'CODATA' },
      eps_r: { value: ENAMEL, unit: '1', says: 'of the enamel', source: 'from memory' },
      ...capacitanceSteps,
    },
    source: 'Massarini & Kazimierczuk, IEEE Trans. Power Electronics 12, 1997 (from memory)',
    assumes: 'Turns touch, the core conducts: an upper estimate.',
  };
}

function notch(look: Look, index: number): Working {
  const { label } = rowOf(look, index);
  const rows = elementsOf(look);
  const at = rows.findIndex((row) => row.label === label);
  const coil: ElementRow | undefined = rows[at];
  const capacitor = rows[at + 1]?.part === 'across' ? rows[at + 1] : undefined;
  const where: Record<string, Bound> = {
    L_x: { value: coil?.l ?? 0, unit: 'H', says: `${label} as fitted` },
    C_s: 'row.own',
  };
  const symbol = capacitor ? symbolOf(capacitor.label) : '';
  if (capacitor) {
    where[symbol] = {
      value: capacitor.fittedC ?? 0,
      unit: 'F',
      says: `${capacitor.label} as fitted`,
    };
  }
  return {
    says: 'The coil with all that lies across it.',
    formula: `1 / (2 * pi * sqrt(L_x * (${capacitor ? `${symbol} + ` : ''}C_s)))`,
    where,
    source: 'Thomson’s formula',
  };
}

const rowOf = (look: Look, index: number): Row =>
  ((look('output.asWound') ?? []) as readonly Row[])[index] ?? { label: '', core: '', wire: '' };

/** The coil of a row as Output hands it on. */
const coilOf = (look: Look, index: number): ShelfCoil | undefined =>
  (look('output.wound') as readonly { readonly wound: ShelfCoil }[] | null)?.[index]?.wound;

const airOf = (look: Look, index: number) => {
  const coil = coilOf(look, index);
  return coil?.on === 'air' ? coil : null;
};

const askedFor = (look: Look, index: number): Bound => ({
  value: coilOf(look, index)?.asked ?? 0,
  unit: 'H',
  says: 'what it is wound for: as designed, of a trap as trimmed',
});

const coreOf = (look: Look, index: number): Core => {
  const coil = coilOf(look, index);
  return coil?.on === 'ring' ? coil.core : (cores[0] as Core);
};

const wireOf = (look: Look, index: number): Wire =>
  wires.find(({ title }) => title === rowOf(look, index).wire) ?? (wires[0] as Wire);

const alOf = (core: Core): Bound => ({
  value: core.al,
  unit: 'H/t²',
  says: core.title,
  source: core.source,
});

/** Core and wire as constants. */
function dimensions(core: Core, wire: Wire): Record<string, Bound> {
  const of = (value: number, says: string, source: string): Bound => ({
    value,
    unit: 'm',
    says,
    source,
  });
  const nominal = 'maker’s nominal dimensions, from memory';
  const enamel = 'IEC 60317-0-1, from memory';
  return {
    h: of(core.size.height, `${core.title}: height`, nominal),
    D_a: of(core.size.outer, `${core.title}: outer diameter`, nominal),
    D: of(core.size.inner, `${core.title}: diameter of the hole`, nominal),
    d_w: of(wire.bare, `${wire.title}: copper`, enamel),
    d_o: of(wire.overall, `${wire.title}: over its enamel`, enamel),
  };
}
