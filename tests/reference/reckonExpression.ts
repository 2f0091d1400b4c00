import { evaluate } from 'mathjs';

/** Evaluates a formula with plain numbers for its symbols, by a general-purpose library. */
export const reckonExpression = (formula: string, symbols: Readonly<Record<string, number>>) =>
  Number(evaluate(formula, { ...symbols }));
