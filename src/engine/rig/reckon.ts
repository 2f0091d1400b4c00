import type { EvalFunction } from 'mathjs';
import { math } from '../quantity/expressionMath.ts';
import type { Unit } from '../quantity/units.ts';
import { units } from '../quantity/units.ts';
import type { Term, Unfolded } from './unfold.ts';

const compiled = new Map<string, EvalFunction>();

/** A working reckoned by the formula evaluator alone: what the engine said is not used. */
export interface Reckoned {
  /** Value of the formula, or of the left side of an equation. */
  readonly value: number | string;
  /** Value of the right side of an equation. */
  readonly right: number | null;
  /** Values of the steps by symbol. */
  readonly steps: Readonly<Record<string, number>>;
}

/** Evaluates a working's formula with plain SI numbers for its symbols. */
export function reckon(unfolded: Unfolded): Reckoned | null {
  const { working, symbols } = unfolded;
  if ('rule' in working) return null;
  const scope: Record<string, unknown> = {};
  const steps: Record<string, number> = {};
  for (const symbol of symbols) {
    if (symbol.formula === null) {
      if (symbol.value !== null) scope[symbol.name] = symbol.value;
      continue;
    }
    const value = plain(evaluate(symbol.formula, scope));
    scope[symbol.name] = value;
    if (typeof value === 'number') steps[symbol.name] = value;
  }
  if ('left' in working) {
    const value = Number(plain(evaluate(working.left, scope)));
    return { value, right: Number(plain(evaluate(working.right, scope))), steps };
  }
  return { value: plain(evaluate(working.formula, scope)), right: null, steps };
}

/**
 * Evaluates a working again with a unit on every symbol. Answers the sentence that says what does
 * not fit, or null where the result (and each step) comes out in the unit declared for it.
 */
export function dimensionsOff(unfolded: Unfolded): string | null {
  const { working, symbols, field } = unfolded;
  if ('rule' in working) return null;
  const scope: Record<string, unknown> = {};
  try {
    for (const symbol of symbols) {
      const value = symbol.formula === null ? withUnit(symbol) : evaluate(symbol.formula, scope);
      if (symbol.formula !== null) {
        const off = unlike(value, symbol.unit);
        if (off) return `${symbol.name}: ${off}`;
      }
      if (value !== null) scope[symbol.name] = value;
    }
    if ('left' in working) {
      const left = evaluate(working.left, scope);
      const right = evaluate(working.right, scope);
      return alike(left, right)
        ? null
        : `the two sides differ: ${dimension(left)}, ${dimension(right)}`;
    }
    const value = evaluate(working.formula, scope);
    return 'unit' in field ? unlike(value, field.unit) : null;
  } catch (error) {
    return error instanceof Error ? error.message : String(error);
  }
}

function evaluate(formula: string, scope: Record<string, unknown>): unknown {
  let ready = compiled.get(formula);
  if (!ready) {
    ready = math.parse(formula).compile();
    compiled.set(formula, ready);
  }
  return ready.evaluate(scope);
}

const evaluated = (expression: string): unknown => evaluate(expression, {});

function plain(value: unknown): number | string {
  if (typeof value === 'number' || typeof value === 'string') return value;
  if (typeof value === 'boolean') return value ? 1 : 0;
  throw new TypeError(`a formula gave ${math.typeOf(value)}`);
}

function withUnit({ value, unit }: Term): unknown {
  const dimension = units[unit].dimension;
  if (typeof value !== 'number' || dimension === '') return value;
  return math.multiply(value, evaluated(dimension) as number);
}

function unlike(value: unknown, unit: Unit): string | null {
  const declared = units[unit].dimension;
  const wanted = declared === '' ? 1 : evaluated(declared);
  return alike(value, wanted) ? null : `comes out in ${dimension(value)}, declared in ${unit}`;
}

function alike(a: unknown, b: unknown): boolean {
  if (math.isUnit(a) && math.isUnit(b)) return a.equalBase(b);
  return !math.isUnit(a) && !math.isUnit(b);
}

const dimension = (value: unknown) =>
  math.isUnit(value) ? value.toSI().formatUnits() || 'a plain number' : 'a plain number';
