import type { Unit } from '../quantity/units.ts';
import type { StageFields } from './declare.ts';
import type { Curve, List, Model, Table } from './kinds.ts';

/**
 * What a symbol in a formula stands for:
 * - a path, `'quartz.lm'`: a field's value, unit and label
 * - `'row.KEY'`: a column of the same table row; `'point.KEY'`: a quantity at the same point of a
 *   curve; `'item'`: this entry of a list
 * - `{ value, unit, says }`: a constant (or a number that the stage's own code supplies)
 * - `{ formula, unit, says }`: a step of its own, from symbols named before it
 */
export type Bound =
  | string
  | { readonly value: number; readonly unit: Unit; readonly says: string; readonly source?: string }
  | { readonly text: string; readonly says: string }
  | { readonly formula: string; readonly unit: Unit; readonly says: string };

interface Told {
  /** One sentence in plain words. */
  readonly says: string;
  readonly where: Readonly<Record<string, Bound>>;
  /** Book, standard, closed form, or "common practice, no source". */
  readonly source: string;
  /** What is taken for granted. */
  readonly assumes?: string;
}

/** The result is the value of a formula (mathjs syntax). Choices: a ternary that gives the key. */
export interface Formula extends Told {
  readonly formula: string;
}

/** The result makes both sides equal: shown with the root put in, and its residual. */
export interface Solved extends Told {
  readonly left: string;
  readonly right: string;
  /** Which symbol of `where` is the root; bound to the result's own path. */
  readonly root: string;
}

/** A name or sentence chosen by a rule that has no arithmetic. Only for words and choices. */
export interface Rule extends Told {
  readonly rule: string;
}

export type Working = Formula | Solved | Rule;

/** Reads a value of the worked rig by path, row or point included; undefined where there is none. */
export type Look = (path: string) => unknown;

/** A working, or a way to get it where its form depends on the rig (how many crystals, which net). */
export type WorkingOf = Working | ((look: Look, index: number) => Working);

type KeysOf<R> = {
  [K in keyof R & string]: R[K] extends Model
    ? never
    : R[K] extends Table & { columns: infer C }
      ? `${K}.${keyof C & string}`
      : R[K] extends Curve & { of: infer Q; along: infer X }
        ? `${K}.${Exclude<keyof Q, X> & string}`
        : R[K] extends List
          ? K
          : K;
}[keyof R & string];

/** A working for every result, every column of a table and every quantity along a curve. */
export type StageWorkings<F extends StageFields = StageFields> = Readonly<
  Record<KeysOf<F['results']>, WorkingOf>
>;
