import type { Ladder } from './ladder.ts';
import { type Branch, type LadderTerm, ladderBranches, matrixOf } from './ladderFormulas.ts';

/** One figure of a ladder as a formula, with its symbols in the order of their working. */
export interface FigureFormula {
  readonly formula: string;
  readonly where: Readonly<Record<string, LadderTerm>>;
}

/**
 * Return loss at the source's end as a formula, dB: voltage and current there for one ampere in the
 * load, the source's impedance added and taken off. Where most comes back, the logarithm of their
 * ratio is written as an inverse hyperbolic tangent, which keeps its digits next to 0 dB.
 *
 * @param f symbol of the frequency
 */
export function returnLossFormula(ladder: Ladder, f: string): FigureFormula {
  const { where, chains } = ladderBranches(ladder, [f]);
  const { branches = [], source = 'R_S', load = 'R_L' } = chains[0] ?? {};
  const rest = [...branches.map(matrixOf), `[${load} / R_1; 1]`].join(' * ');
  const seen = (row: string) => `sum([${row}] * ${rest})`;
  const step = (formula: string, says: string): LadderTerm => ({ formula, unit: '1', says });
  return {
    formula:
      '2 * s_off < s_on ? 10 * log10(s_on / s_off) : 20 * atanh(4 * R_S / R_1 * p_in / (s_on + s_off)) / log(10)',
    where: {
      ...where,
      p_in: step(`re(${seen('1, 0')} * conj(${seen('0, 1')}))`, 'power that goes in'),
      s_on: step(`abs(${seen(`1, ${source} / R_1`)})^2`, 'with the source’s impedance added'),
      s_off: step(`abs(${seen(`1, -conj(${source} / R_1)`)})^2`, 'with it taken off'),
    },
  };
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
