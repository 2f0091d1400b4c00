import type { Sums } from './sums.ts';

/** How one figure follows the draws, as far as straight lines go. */
export interface Regression {
  /** Change of the figure for one unit of each draw, in units of the sums. */
  readonly slopes: Float64Array;
  /** Part of the figure's variance that each draw accounts for. */
  readonly shares: Float64Array;
  /** All of them together: what is left is bends, and parts acting on each other. */
  readonly explained: number;
}

/**
 * Least squares of each figure on all draws, with a constant.
 *
 * @param builds how many were counted
 * @return one regression for each figure
 */
export function regression(sums: Sums, builds: number): Regression[] {
  const { draws, figures, x, y, xx, xy, yy } = sums;
  const n = draws;
  const spread = new Float64Array(n * n);
  for (let i = 0; i < n; i += 1) {
    for (let j = i; j < n; j += 1) {
      const c = at(xx, i * n + j) - (at(x, i) * at(x, j)) / builds;
      spread[i * n + j] = c;
      spread[j * n + i] = c;
    }
  }
  const own = Float64Array.from({ length: n }, (_, i) => at(spread, i * n + i));
  const right = Array.from({ length: figures }, (_, k) =>
    Float64Array.from({ length: n }, (_, i) => at(xy, k * n + i) - (at(x, i) * at(y, k)) / builds),
  );
  solve(spread, right);
  return right.map((slopes, k) => {
    const total = at(yy, k) - at(y, k) ** 2 / builds;
    const shares = slopes.map((slope, i) => (total > 0 ? (slope * slope * at(own, i)) / total : 0));
    return {
      slopes,
      shares,
      explained: Math.min(
        1,
        shares.reduce((sum, one) => sum + one, 0),
      ),
    };
  });
}

const at = (of: Float64Array, i: number): number => of[i] as number;

/** Cholesky's method for several right-hand sides at once; each is overwritten by its solution. */
function solve(a: Float64Array, right: readonly Float64Array[]): void {
  const n = right[0]?.length ?? 0;
  for (let j = 0; j < n; j += 1) {
    for (let i = j; i < n; i += 1) {
      let sum = at(a, i * n + j);
      for (let k = 0; k < j; k += 1) sum -= at(a, i * n + k) * at(a, j * n + k);
      // A draw that never varied has no say.
      a[i * n + j] =
        i === j ? Math.sqrt(Math.max(sum, 0)) || Number.POSITIVE_INFINITY : sum / at(a, j * n + j);
    }
  }
  for (const b of right) {
    for (let i = 0; i < n; i += 1) {
      let sum = at(b, i);
      for (let k = 0; k < i; k += 1) sum -= at(a, i * n + k) * at(b, k);
      b[i] = sum / at(a, i * n + i);
    }
    for (let i = n - 1; i >= 0; i -= 1) {
      let sum = at(b, i);
      for (let k = i + 1; k < n; k += 1) sum -= at(a, k * n + i) * at(b, k);
      b[i] = sum / at(a, i * n + i);
    }
  }
}
