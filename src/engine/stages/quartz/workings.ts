import type { Look, StageWorkings, Working } from '../../fields/workings.ts';
import { deriveCrystal, type Given, type Way } from './derive.ts';
import type { quartzFields } from './fields.ts';
import { type Gathered, gather } from './sources.ts';
import { typicalCrystal } from './typical.ts';

const load = {
  value: 20e-12,
  unit: 'F',
  says: 'load for which crystals are usually marked',
} as const;
const circuit = 'closed form of the equivalent circuit (IEC 60122-1)';

export const quartzWorkings: StageWorkings<typeof quartzFields> = {
  fs: (look) => {
    const way = wayOf(look, 'fs');
    if (way === 'given') return asGiven(look, 'f_s', 'fs');
    if (way === 'resonance') {
      return {
        says: 'Where the reactances of Lm and Cm cancel.',
        formula: '1 / (2 * pi * sqrt(L_m * C_m))',
        where: { L_m: 'quartz.lm', C_m: 'quartz.cm' },
        source: circuit,
      };
    }
    if (way === 'parallel') {
      return {
        says: 'Down from the parallel resonance by what Cm and C0 put between the two.',
        formula: 'f_p / sqrt(1 + C_m / C_0)',
        where: { f_p: 'quartz.fpGiven', C_m: 'quartz.cm', C_0: 'quartz.c0' },
        source: circuit,
      };
    }
    return {
      says: 'Down from the marking by what a 20 pF load would have raised it.',
      formula: 'f_mark / (1 + C_m / (2 * (C_0 + C_L)))',
      where: {
        f_mark: look('plan.marking') === null ? 'plan.nominal' : 'plan.marking',
        C_m: 'quartz.cm',
        C_0: 'quartz.c0',
        C_L: load,
      },
      source: 'makers’ notes on load capacitance, first order',
      assumes: 'The crystal is marked for 20 pF: a guess until fs is measured.',
    };
  },
  lm: (look) =>
    wayOf(look, 'lm') === 'given'
      ? asGiven(look, 'L_m', 'lm')
      : {
          says: 'The inductance that resonates with Cm at fs.',
          formula: '1 / ((2 * pi * f_s)^2 * C_m)',
          where: { f_s: 'quartz.fs', C_m: 'quartz.cm' },
          source: circuit,
        },
  cm: (look) => {
    const way = wayOf(look, 'cm');
    if (way === 'given') return asGiven(look, 'C_m', 'cm');
    if (way === 'resonance') {
      return {
        says: 'The capacitance that resonates with Lm at fs.',
        formula: '1 / ((2 * pi * f_s)^2 * L_m)',
        where: { f_s: 'quartz.fs', L_m: 'quartz.lm' },
        source: circuit,
      };
    }
    if (way === 'spacing') {
      return {
        says: 'From the distance between the two resonances.',
        formula: 'C_0 * ((f_p / f_s)^2 - 1)',
        where: { C_0: 'quartz.c0', f_p: 'quartz.fpGiven', f_s: 'quartz.fs' },
        source: circuit,
        assumes:
          'C0 is free of the fixture’s stray: a tenth too much of it makes Cm a tenth too large.',
      };
    }
    return guessed(look, 'cm', 'C_typ', 'F');
  },
  rm: (look) => {
    const way = wayOf(look, 'rm');
    if (way === 'given') return asGiven(look, 'R_m', 'rm');
    if (way === 'loss') {
      return {
        says: 'The resistance that makes this Q with the reactance of Lm.',
        formula: '2 * pi * f_s * L_m / Q_u',
        where: { f_s: 'quartz.fs', L_m: 'quartz.lm', Q_u: 'quartz.qu' },
        source: circuit,
      };
    }
    return guessed(look, 'rm', 'R_typ', 'Ω');
  },
  qu: (look) =>
    wayOf(look, 'qu') === 'given'
      ? asGiven(look, 'Q_u', 'qu')
      : {
          says: 'The reactance of Lm over the loss.',
          formula: '2 * pi * f_s * L_m / R_m',
          where: { f_s: 'quartz.fs', L_m: 'quartz.lm', R_m: 'quartz.rm' },
          source: circuit,
        },
  c0: (look) => {
    const way = wayOf(look, 'c0');
    if (way === 'given') return asGiven(look, 'C_0', 'c0');
    if (way === 'shunt') {
      return {
        says: 'The holder capacitance that puts the parallel resonance there.',
        formula: 'C_m / ((f_p / f_s)^2 - 1)',
        where: { C_m: 'quartz.cm', f_p: 'quartz.fpGiven', f_s: 'quartz.fs' },
        source: circuit,
      };
    }
    return guessed(look, 'c0', 'C_typ', 'F');
  },
  fp: (look) =>
    wayOf(look, 'fp') === 'given'
      ? asGiven(look, 'f_p', 'fp')
      : {
          says: 'Where the crystal above its series resonance is inductive enough to meet C0.',
          formula: 'f_s * sqrt(1 + C_m / C_0)',
          where: { f_s: 'quartz.fs', C_m: 'quartz.cm', C_0: 'quartz.c0' },
          source: circuit,
        },
  ratio: {
    says: 'How much the holder outweighs the quartz.',
    formula: 'C_0 / C_m',
    where: { C_0: 'quartz.c0', C_m: 'quartz.cm' },
    source: 'definition',
  },
  marking20: {
    says: 'In an oscillator that loads it with 20 pF the crystal meets that capacitance plus C0.',
    formula: 'f_s * sqrt(1 + C_m / (C_0 + C_L))',
    where: { f_s: 'quartz.fs', C_m: 'quartz.cm', C_0: 'quartz.c0', C_L: load },
    source: circuit,
  },
  whence: {
    says: 'Where each figure that the rest is worked from was taken.',
    rule: 'What is typed comes first; then the way of measuring that was chosen; then the medians of the bag; then what the others give; then a guess. Lm is not taken from elsewhere where Lm, Cm or fp is typed, nor Rm where Rm or Qu is.',
    where: {},
    source: 'a plain rule of this program',
  },
  ring: {
    says: 'The time in which the crystal’s oscillation falls to 1/e when left alone.',
    formula: 'Q_u / (pi * f_s)',
    where: { Q_u: 'quartz.qu', f_s: 'quartz.fs' },
    source: 'closed form of a series resonant circuit',
  },
};

/** A figure taken as it is: typed, measured, or the median of the bag. */
function asGiven(look: Look, symbol: string, key: keyof Given): Working {
  const source = gathered(look).from[key] ?? 'typed';
  const path = source === 'typed' ? `quartz.${key}Given` : `${source}.${key}`;
  return { ...told[source], formula: symbol, where: { [symbol]: path } };
}

const told = {
  typed: { says: 'As given.', source: 'as typed' },
  measure: { says: 'As measured.', source: 'the way of measuring that was chosen' },
  sweep: { says: 'As the sweep has it.', source: 'fit of the sweep' },
  bag: { says: 'The median of the bag.', source: 'the list of the bag' },
} as const;

function gathered(look: Look): Gathered {
  const at = (path: string) => (look(path) as number | null | undefined) ?? null;
  const typed = (key: keyof Given) => at(`quartz.${key}Given`);
  const of = (stage: string) => ({
    fs: at(`${stage}.fs`),
    lm: at(`${stage}.lm`),
    rm: at(`${stage}.rm`),
    c0: at(`${stage}.c0`),
  });
  return gather({
    fs: typed('fs'),
    lm: typed('lm'),
    cm: typed('cm'),
    rm: typed('rm'),
    qu: typed('qu'),
    c0: typed('c0'),
    fp: typed('fp'),
    method: String(look('measure.method') ?? 'none'),
    measured: of('measure'),
    swept: of('sweep'),
    bagged: of('bag'),
  });
}

function crystalOf(look: Look) {
  const holder = look('quartz.holder') as 'full' | 'low' | 'smd';
  const marking = (look('plan.marking') ?? look('plan.nominal')) as number | null;
  return deriveCrystal(gathered(look).given, (f) => typicalCrystal(f, holder), marking);
}

const wayOf = (look: Look, key: keyof Given): Way => crystalOf(look)?.ways[key] ?? 'guess';

function guessed(look: Look, key: 'cm' | 'rm' | 'c0', symbol: string, unit: 'F' | 'Ω'): Working {
  return {
    says: 'A guess: what is typical of this frequency and holder.',
    formula: symbol,
    where: {
      [symbol]: {
        value: crystalOf(look)?.values[key] ?? 0,
        unit,
        says: 'middle of the usual band for this frequency and holder',
        source: 'makers’ data and builders’ measurements, from memory',
      },
    },
    source: 'makers’ data and builders’ measurements, from memory; wide',
    assumes: 'A third either way for Cm, a factor of two for Rm. Measure before buying parts.',
  };
}
