import type { Bound, Look, Working } from '../../fields/workings.ts';
import type { Unit } from '../../quantity/units.ts';
import { changeOf, type MovedKey, varied } from './doubts.ts';
import { readingsOf } from './readings.ts';
import { seenBy } from './seen.ts';

const rows = (look: Look) => {
  const seen = seenBy(look);
  const readings = readingsOf(seen);
  return (readings && varied(readings, seen)) ?? [];
};

const guide = 'propagation of uncertainty, JCGM 100 (GUM), by differences';

/** What one reading's error does to one figure. */
const change =
  (key: MovedKey, unit: Unit, name: string) =>
  (look: Look, index: number): Working => {
    const row = rows(look)[index];
    const worked = (value: number | null | undefined, way: string): Bound => ({
      value: value ?? 0,
      unit,
      says: `${name} worked anew with the reading ${row?.error ?? ''} ${way}`,
    });
    return {
      says: `${row?.reading ?? 'The reading'} so much higher and so much lower, and half of the difference.`,
      formula: '(x_up - x_down) / 2',
      where: {
        x_up: worked(row?.up[key], 'higher'),
        x_down: worked(row?.down[key], 'lower'),
      },
      source: guide,
    };
  };

/** All effects on one figure together. */
const all =
  (key: MovedKey, unit: Unit) =>
  (look: Look): Working => {
    const where: Record<string, Bound> = {};
    rows(look).forEach((row, i) => {
      where[`d_${i + 1}`] = {
        value: changeOf(row, key) ?? 0,
        unit,
        says: `by ${row.reading.charAt(0).toLowerCase()}${row.reading.slice(1)}`,
      };
    });
    return {
      says: 'What the error of each reading does, added as squares.',
      formula: `sqrt(${Object.keys(where)
        .map((d) => `${d}^2`)
        .join(' + ')})`,
      where,
      source: guide,
      assumes: 'The errors have nothing to do with each other.',
    };
  };

export const doubtWorkings = {
  fsError: all('fs', 'Hz'),
  lmError: all('lm', 'H'),
  cmError: all('cm', 'F'),
  rmError: all('rm', 'Ω'),
  quError: all('qu', '1'),
  c0Error: {
    says: 'As given for capacitances.',
    formula: 'e_C',
    where: { e_C: 'measure.capacitanceError' },
    source: 'as typed, or typical',
  },
  'doubts.reading': {
    says: 'The readings of the way chosen.',
    rule: 'One row for each reading that the crystal depends on.',
    where: {},
    source: 'definition',
  },
  'doubts.error': {
    says: 'As given below for each kind of reading.',
    rule: 'A width is the difference of two frequencies: √2 of the error of one.',
    where: {},
    source: guide,
  },
  'doubts.fs': change('fs', 'Hz', 'fs'),
  'doubts.lm': change('lm', 'H', 'Lm'),
  'doubts.cm': change('cm', 'F', 'Cm'),
  'doubts.rm': change('rm', 'Ω', 'Rm'),
  'doubts.qu': change('qu', '1', 'Qu'),
  weakest: {
    says: 'The reading with the largest share of the squares.',
    rule: 'In Cm, which sets the filter’s width, and in Rm where there is one.',
    where: {},
    source: guide,
  },
} as const;
