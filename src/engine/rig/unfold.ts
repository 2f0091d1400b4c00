import type { Field, Origin } from '../fields/kinds.ts';
import type { Stage } from '../fields/stage.ts';
import type { Bound, Look, Working, WorkingOf } from '../fields/workings.ts';
import type { Unit } from '../quantity/units.ts';
import { fieldAt } from './fieldAt.ts';
import { originAt, valueAt, type Worked } from './worked.ts';

/** A symbol of a formula with all that is to be said of it. */
export interface Term {
  readonly name: string;
  readonly label: string;
  /** SI value; null where it is a step that the formula evaluator has to work out. */
  readonly value: number | string | null;
  readonly unit: Unit;
  readonly digits: number | undefined;
  readonly origin: Origin | 'constant' | 'step';
  /** The field it stands for, so that the reader can go on to its own workings. */
  readonly path: string | null;
  /** The formula of a step. */
  readonly formula: string | null;
  readonly source: string | null;
}

/** One result's working with this rig's numbers put in. */
export interface Unfolded {
  /** `filter.loss`, or `output.harmonics.level` for a column or curve. */
  readonly path: string;
  /** Row, point or entry; 0 for a single result. */
  readonly index: number;
  readonly working: Working;
  readonly symbols: readonly Term[];
  readonly value: number | string | null;
  readonly field: Field;
}

/** How many rows, points or entries of a result there are to work: 1 for a single one. */
export function workingCount(worked: Worked, stage: Stage, key: string): number {
  const [name = ''] = key.split('.');
  const value = worked.stages[stage.fields.key]?.results[name];
  if (Array.isArray(value)) return value.length;
  const field = stage.fields.results[name];
  if (field?.kind === 'curve' && value) {
    return (value as Record<string, Float64Array>)[field.along]?.length ?? 0;
  }
  return value === null || value === undefined ? 0 : 1;
}

/**
 * Unfolds the working of a result, by its key in the stage's workings (`loss`, `harmonics.level`)
 * and, for rows, points and entries, an index. Null where the result has no value.
 */
export function unfold(worked: Worked, stage: Stage, key: string, index = 0): Unfolded | null {
  const stageKey = stage.fields.key;
  const [name = '', part] = key.split('.');
  const field = stage.fields.results[name];
  const whole = worked.stages[stageKey]?.results[name];
  if (!field || whole === null || whole === undefined) return null;
  const cell = cellOf(field, whole, part, index);
  if (!cell || cell.value === null || cell.value === undefined) return null;

  const look: Look = (path) => {
    const [head = '', column = ''] = path.split('.');
    if (head === 'row' || head === 'point') return cell.at(column);
    if (path === 'item') return cell.value;
    if (path === 'index') return index;
    return valueAt(worked, path);
  };
  const of: WorkingOf | undefined = (stage.workings as Record<string, WorkingOf>)[key];
  if (of === undefined) return null;
  const working = typeof of === 'function' ? of(look, index) : of;
  const symbols = Object.entries(working.where).map(([symbol, bound]) =>
    bind(symbol, bound, look, worked, { stage, field }),
  );
  const value = cell.value as number | string;
  return { path: `${stageKey}.${key}`, index, working, symbols, value, field: cell.field };
}

interface Cell {
  readonly field: Field;
  readonly value: unknown;
  readonly at: (column: string) => unknown;
}

function cellOf(
  field: Field,
  whole: unknown,
  part: string | undefined,
  index: number,
): Cell | null {
  if (field.kind === 'table') {
    const row = (whole as readonly Record<string, unknown>[])[index];
    const column = field.columns[part ?? ''];
    return row && column ? { field: column, value: row[part ?? ''], at: (c) => row[c] } : null;
  }
  if (field.kind === 'curve') {
    const along = whole as Record<string, Float64Array>;
    const of = field.of[part ?? ''];
    return of
      ? { field: of, value: along[part ?? '']?.[index], at: (c) => along[c]?.[index] }
      : null;
  }
  if (field.kind === 'list') {
    const list = whole as readonly number[];
    return { field, value: list[index], at: () => undefined };
  }
  return { field, value: whole, at: () => undefined };
}

function bind(
  name: string,
  bound: Bound,
  look: Look,
  worked: Worked,
  at: { stage: Stage; field: Field },
): Term {
  const blank = { name, digits: undefined, path: null, formula: null, source: null } as const;
  if (typeof bound === 'string') {
    const field = fieldFor(bound, at) ?? fieldAt(bound);
    const value = look(bound);
    return {
      ...blank,
      label: field?.label ?? bound,
      value: typeof value === 'number' || typeof value === 'string' ? value : null,
      unit: unitOf(field),
      digits: field && 'digits' in field ? field.digits : undefined,
      origin: bound.includes('.') ? originAt(worked, bound) : 'worked',
      path: /^(row|point|item|index)\b/.test(bound) ? null : bound,
    };
  }
  if ('formula' in bound) {
    const { says: label, unit, formula } = bound;
    return { ...blank, label, value: null, unit, origin: 'step', formula };
  }
  if ('text' in bound) {
    return { ...blank, label: bound.says, value: bound.text, unit: '1', origin: 'constant' };
  }
  const { says: label, value, unit, source = null } = bound;
  return { ...blank, label, value, unit, origin: 'constant', source };
}

const unitOf = (field: Field | undefined): Unit => (field && 'unit' in field ? field.unit : '1');

function fieldFor(
  bound: string,
  { stage, field }: { stage: Stage; field: Field },
): Field | undefined {
  const [head = '', key = ''] = bound.split('.');
  if (head === 'row' && field.kind === 'table') return field.columns[key];
  if (head === 'point' && field.kind === 'curve') return field.of[key];
  if (head === 'item') return field;
  if (head === stage.fields.key) return stage.fields.inputs[key] ?? stage.fields.results[key];
  return undefined;
}
