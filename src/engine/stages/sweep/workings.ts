import type { Bound, Look, StageWorkings, Working, WorkingOf } from '../../fields/workings.ts';
import { given, modelOf, passedFormula, resistanceOf } from './circuitFormula.ts';
import type { sweepFields } from './fields.ts';
import { USUAL_C0 } from './fitted.ts';
import type { Figure, SweepModel } from './sweepModel.ts';

const circuit = 'closed form of the equivalent circuit (IEC 60122-1)';
const squares = 'least squares (Marquardt, J. SIAM 11, 1963); standard errors from (JᵀJ)⁻¹';
const counted = 'the text';

/** Something read off the text. */
const readOff = (
  says: string,
  symbol: string,
  unit: 'Hz' | '1' | 'dB',
  value: (look: Look, index: number) => number,
): WorkingOf => {
  return (look, index) => ({
    says,
    formula: symbol,
    where: { [symbol]: given(value(look, index), unit, says) },
    source: counted,
  });
};

const word = (says: string): Working => ({ says, rule: says, where: {}, source: counted });

type Mean = keyof NonNullable<SweepModel['fitted']>['means'];

/** A fitted figure: where every row, the other figures held, would put it, on the mean. */
function root(
  path: string,
  symbol: string,
  of: Mean,
  unit: 'Hz' | 'H' | 'F' | 'Ω' | 'dB',
): WorkingOf {
  return (look) => ({
    says: 'The sum of squares is least where the rows agree on it: each, the other figures held, would put it somewhere, and the mean of that, weighted by the square of how much the row changes with it, is the figure itself.',
    left: symbol,
    right: 'm_rows',
    root: symbol,
    where: {
      [symbol]: path,
      m_rows: given(modelOf(look).fitted?.means[of] ?? 0, unit, 'mean of what the rows say'),
    },
    source: squares,
    assumes:
      'One crystal between two equal resistances, and noise that does not know the frequency.',
  });
}

function error(of: Figure, unit: 'Hz' | 'H' | 'F' | 'Ω' | '1' | 'dB'): WorkingOf {
  return (look) => {
    const { perDb = 0, doubt = 0 } = modelOf(look).fitted?.answering[of] ?? {};
    const held = doubt > 0;
    return {
      says: held
        ? 'The scatter of the rows, by how far the figure moves for it, and what a C0 that was held may be off.'
        : 'The scatter of the rows, by how far the figure moves for it.',
      formula: held ? 'sqrt((s * g)^2 + d^2)' : 's * g',
      where: {
        s: 'sweep.scatter',
        g: given(perDb, unit, 'how far it moves for one dB of scatter in every row'),
        ...(held ? { d: given(doubt, unit, 'how far it moves with C0') } : {}),
      },
      source: squares,
      assumes: 'The fixture is what it is said to be: no error of resistance or level is in it.',
    };
  };
}

/** A figure of the crystal, fitted or expected. */
const or = (look: Look, key: 'fs' | 'lm' | 'fp', unit: 'Hz' | 'H', says: string): Bound =>
  look(`sweep.${key}`) === null
    ? given(modelOf(look).expected?.[key] ?? 0, unit, says)
    : `sweep.${key}`;

const expectedRm = (look: Look): Bound =>
  modelOf(look).fitted === null
    ? given(modelOf(look).expected?.rm ?? 0, 'Ω', 'resistance, as is usual')
    : resistanceOf(look);

export const sweepWorkings: StageWorkings<typeof sweepFields> = {
  format: word('Touchstone where there is an option line or a version; else columns of numbers.'),
  rows: readOff('Rows that have a frequency and a level', 'n', '1', (look) => modelOf(look).rows),
  from: readOff('The lowest frequency', 'f_a', 'Hz', (look) => modelOf(look).from),
  to: readOff('The highest frequency', 'f_z', 'Hz', (look) => modelOf(look).to),
  step: (look) => {
    const [below, above, steps] = modelOf(look).around;
    return {
      says: 'From the row before the highest one to the row after it.',
      formula: '(f_after - f_before) / n',
      where: {
        f_after: given(above, 'Hz', 'the row after'),
        f_before: given(below, 'Hz', 'the row before'),
        n: given(steps, '1', 'steps between them'),
      },
      source: counted,
    };
  },
  resistance: (look) => {
    if (look('sweep.rt') !== null) {
      return { says: 'As given.', formula: 'R', where: { R: 'sweep.rt' }, source: 'as typed' };
    }
    const value = look('sweep.resistance') as number;
    const { reference } = modelOf(look);
    const half = reference !== null && value !== reference;
    const says = reference === null ? 'usual' : 'in the option line of the file';
    return {
      says: half ? 'One port: half of what the file refers to.' : 'What levels are referred to.',
      formula: half ? 'R_ref / 2' : 'R_ref',
      where: { R_ref: given(half ? 2 * value : value, 'Ω', says) },
      source: reference === null ? 'common practice, no source' : counted,
    };
  },
  'columns.column': readOff('Counted from 1', 'n', '1', (_, index) => index + 1),
  'columns.name': word('The title over the column, or the standard’s.'),
  'columns.first': readOff('The first row', 'x', '1', (look, i) => modelOf(look).ends[i]?.[0] ?? 0),
  'columns.last': readOff('The last row', 'x', '1', (look, i) => modelOf(look).ends[i]?.[1] ?? 0),
  'columns.taken': word('By title and unit, else by the figures themselves; or as said.'),
  'notices.lines': (look, index) => {
    const rows = look('sweep.notices') as readonly { lines: number }[] | null;
    return {
      says: 'Counted.',
      formula: 'n',
      where: { n: given(rows?.[index]?.lines ?? 0, '1', 'lines') },
      source: counted,
    };
  },
  'notices.says': word('Found while reading.'),
  fs: root('sweep.fs', 'f_s', 'fs', 'Hz'),
  fsError: error('fs', 'Hz'),
  lm: root('sweep.lm', 'L_m', 'lm', 'H'),
  lmError: error('lm', 'H'),
  cm: {
    says: 'The capacitance that resonates with Lm at fs.',
    formula: '1 / ((2 * pi * f_s)^2 * L_m)',
    where: { f_s: 'sweep.fs', L_m: 'sweep.lm' },
    source: circuit,
  },
  cmError: error('cm', 'F'),
  rm: root('sweep.rm', 'R_m', 'rm', 'Ω'),
  rmError: error('rm', 'Ω'),
  c0All: (look, index) => {
    if (modelOf(look).fitted?.held === false) {
      const of = root('sweep.c0All', 'C_x', 'c0All', 'F');
      return typeof of === 'function' ? of(look, index) : of;
    }
    if (look('sweep.c0Known') !== null) {
      return {
        says: 'As given.',
        formula: 'C_k',
        where: { C_k: 'sweep.c0Known' },
        source: 'as typed',
      };
    }
    const read = look('measure.c0Read') as number | null;
    const stray = (look('measure.meterStray') as number | null) ?? 0;
    if (read !== null && read > stray) {
      return {
        says: 'What the meter showed, less its own stray, and the fixture’s stray beside it.',
        formula: 'C_r - C_z + C_j',
        where: {
          C_r: 'measure.c0Read',
          C_z: given(stray, 'F', 'what the meter shows without the crystal'),
          C_j: 'measure.beside',
        },
        source: circuit,
      };
    }
    return {
      says: 'A holder as they usually are, and the fixture’s stray beside it.',
      formula: 'C_h + C_j',
      where: {
        C_h: given(USUAL_C0, 'F', 'a holder as they usually are'),
        C_j: 'measure.beside',
      },
      source: 'makers’ data and builders’ measurements, from memory; wide',
    };
  },
  c0: {
    says: 'What lies across the crystal, less the fixture’s share.',
    formula: 'C_x - C_j',
    where: { C_x: 'sweep.c0All', C_j: 'measure.beside' },
    source: circuit,
  },
  c0Error: error('c0', 'F'),
  c0From: word('From the sweep, unless it knows C0 worse than was known before.'),
  qu: {
    says: 'The reactance of Lm over the loss.',
    formula: '2 * pi * f_s * L_m / R_m',
    where: { f_s: 'sweep.fs', L_m: 'sweep.lm', R_m: 'sweep.rm' },
    source: circuit,
  },
  quError: error('qu', '1'),
  fp: {
    says: 'Where the crystal above its series resonance is inductive enough to meet C0.',
    formula: 'f_s * sqrt(1 + C_m / C_0)',
    where: { f_s: 'sweep.fs', C_m: 'sweep.cm', C_0: 'sweep.c0' },
    source: circuit,
  },
  fpError: error('fp', 'Hz'),
  shuntFound: root('sweep.shuntFound', 'C_s', 'shunt', 'F'),
  shuntError: error('shunt', 'F'),
  levelFound: root('sweep.levelFound', 'A_f', 'level', 'dB'),
  levelError: error('level', 'dB'),
  rms: (look) => ({
    says: 'The root of the mean of the squares.',
    formula: 'sqrt(S / n)',
    where: {
      S: given(modelOf(look).fitted?.sum ?? 0, 'dB', 'sum of squares of what is left, as weighted'),
      n: given(modelOf(look).fitted?.count ?? 1, '1', 'rows, those far off as part of one'),
    },
    source: squares,
  }),
  scatter: (look) => ({
    says: 'As many rows as there are parameters are used up by fitting.',
    formula: 'sqrt(S / max(1, n - p))',
    where: {
      S: given(modelOf(look).fitted?.sum ?? 0, 'dB', 'sum of squares of what is left, as weighted'),
      n: given(modelOf(look).fitted?.count ?? 1, '1', 'rows, those far off as part of one'),
      p: given(modelOf(look).fitted?.free ?? 0, '1', 'parameters fitted'),
    },
    source: squares,
  }),
  discounted: (look) => ({
    says: 'Further off than six times the scatter of the rest.',
    formula: 'n',
    where: { n: given(Number(look('sweep.discounted')), '1', 'rows counted') },
    source: 'Huber, Ann. Math. Stat. 35 (1964) 73',
  }),
  peakLoss: (look) => {
    const { formula, where } = passedFormula(look, 'sweep.fs');
    const { A_f: _, ...rest } = where;
    return {
      says: 'What the fitted circuit loses where the motional arm is a resistance.',
      formula: `-(${formula.replace('A_f + ', '')})`,
      where: rest,
      source: circuit,
    };
  },
  width: (look) => ({
    says: 'The whole resistance of the loop over the inductance.',
    formula: '(2 * R_T + R_m) / (2 * pi * L_m)',
    where: {
      R_T: 'sweep.resistance',
      R_m: expectedRm(look),
      L_m: or(look, 'lm', 'H', 'inductance, as is usual'),
    },
    source: 'closed form of a series resonant circuit; C0 left out',
  }),
  ring: {
    says: 'The oscillation dies away with the width of the peak.',
    formula: '1 / (pi * B_x)',
    where: { B_x: 'sweep.width' },
    source: 'closed form of a series resonant circuit',
  },
  stepWanted: {
    says: 'Ten rows on the peak.',
    formula: 'B_x / 10',
    where: { B_x: 'sweep.width' },
    source: 'common practice, no source',
  },
  bandwidthWanted: {
    says: 'So that the analyser waits five ring times: what is left of the step before is then under a hundredth.',
    formula: '1 / (5 * tau)',
    where: { tau: 'sweep.ring' },
    source: 'closed form: e⁻⁵ is 0.7 %',
  },
  peakFrom: (look) => ({
    says: 'Six widths below.',
    formula: 'f_s - 6 * B_x',
    where: { f_s: or(look, 'fs', 'Hz', 'series resonance to expect'), B_x: 'sweep.width' },
    source: 'common practice, no source',
  }),
  peakTo: (look) => ({
    says: 'Six widths above.',
    formula: 'f_s + 6 * B_x',
    where: { f_s: or(look, 'fs', 'Hz', 'series resonance to expect'), B_x: 'sweep.width' },
    source: 'common practice, no source',
  }),
  dipTo: (look) => ({
    says: 'A fifth further than from series to parallel resonance.',
    formula: 'f_p + (f_p - f_s) / 5',
    where: {
      f_s: or(look, 'fs', 'Hz', 'series resonance to expect'),
      f_p: or(look, 'fp', 'Hz', 'parallel resonance to expect'),
    },
    source: 'common practice, no source',
  }),
  dipPoints: {
    says: 'The whole stretch in steps of a tenth of the width.',
    formula: 'ceil((f_z - f_a) / df) + 1',
    where: { f_z: 'sweep.dipTo', f_a: 'sweep.peakFrom', df: 'sweep.stepWanted' },
    source: 'definition',
  },
  'sweep.measured': readOff('As read, against a wire', 'A_m', 'dB', (look, i) => {
    return modelOf(look).levels?.[i] ?? 0;
  }),
  'sweep.fitted': (look) => {
    const { formula, where } = passedFormula(look, 'point.frequency');
    return {
      says: 'What the fitted circuit passes between the two resistances, against a wire.',
      formula,
      where,
      source: circuit,
    };
  },
  'sweep.left': {
    says: 'Measured less fitted.',
    formula: 'A_m - A_c',
    where: { A_m: 'point.measured', A_c: 'point.fitted' },
    source: 'definition',
  },
};
