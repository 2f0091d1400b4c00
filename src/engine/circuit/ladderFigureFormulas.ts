import type { Ladder } from './ladder.ts';
import { type Branch, type LadderTerm, ladderBranches, matrixOf } from './ladderFormulas.ts';

/** One figure of a ladder as a formula, with its symbols in the order of their working. */
export interface FigureFormula {
  readonly formula: string;
  readonly where: Readonly<Record<string, LadderTerm>>;
}

/**
 * Return loss at the source's end as a formula, dB: the source voltage for one ampere in the load,
 * against the same with the source's impedance taken off instead of added.
 *
 * @param f symbol of the frequency
 */
export function returnLossFormula(ladder: Ladder, f: string): FigureFormula {
  const { where, chains } = ladderBranches(ladder, [f]);
  const { branches = [], source = 'R_S', load = 'R_L' } = chains[0] ?? {};
  const rest = [...branches.map(matrixOf), `[${load} / R_1; 1]`].join(' * ');
  const into = (row: string) => `abs(sum([1, ${row} / R_1] * ${rest}))`;
  return { formula: `20 * log10(${into(source)} / ${into(`-conj(${source})`)})`, where };
}

/**
 * Group delay as a formula, s: the imaginary part of the derivative of the source voltage (for one
 * ampere in the load) over itself. Each arm's matrix carries its own derivative beside it, so that
 * the product brings out the derivative of the whole.
 *
 * @param f symbol of the frequency
 */
export function delayFormula(ladder: Ladder, f: string): FigureFormula {
  const { where, chains } = ladderBranches(ladder, [f]);
  const { branches = [], source = 'R_S', load = 'R_L' } = chains[0] ?? {};
  const product = (row: string, matrices: readonly string[], column: string) =>
    `sum(${[row, ...matrices, column].join(' * ')})`;
  const plain = product(`[1, ${source} / R_1]`, branches.map(matrixOf), `[${load} / R_1; 1]`);
  const slope = product(
    `[1, ${source} / R_1, 0, 0]`,
    branches.map(withSlope),
    `[0; 0; ${load} / R_1; 1]`,
  );
  return { formula: `im(${slope} / ${plain}) / (2 * pi * ${f})`, where };
}

/** Chain matrix M and its derivative M′ as one: [M, M′; 0, M]. */
const withSlope = ({ place, value, slope }: Branch): string =>
  place === 'series'
    ? `[1, ${value}, 0, ${slope}; 0, 1, 0, 0; 0, 0, 1, ${value}; 0, 0, 0, 1]`
    : `[1, 0, 0, 0; ${value}, 1, ${slope}, 0; 0, 0, 1, 0; 0, 0, ${value}, 1]`;
