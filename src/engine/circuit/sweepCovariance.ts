import { choleskyFactor, choleskySolve } from './cholesky.ts';
import { SWEEP, SWEEP_SIZE } from './crystalSweep.ts';
import type { SweepState } from './sweepDescent.ts';
import { rowsThatCount, type SweepRows, sweepNormal } from './sweepRows.ts';

/** s²(JᵀWJ)⁻¹ of the free parameters, set into 7 × 7. */
export function sweepCovariance(
  rows: SweepRows,
  { p }: SweepState,
  free: readonly number[],
): Float64Array {
  const n = free.length;
  const a = new Float64Array(n * n);
  const sum = sweepNormal(rows, p, free, a, new Float64Array(n));
  const variance = sum / Math.max(1, rowsThatCount(rows) - n);
  const whole = new Float64Array(SWEEP_SIZE * SWEEP_SIZE).fill(0);
  const scale = free.map((_, j) => Math.sqrt(a[j * n + j] as number) || 1);
  for (let j = 0; j < n; j += 1) {
    for (let k = 0; k <= j; k += 1) {
      a[j * n + k] = (a[j * n + k] as number) / ((scale[j] as number) * (scale[k] as number));
    }
  }
  const sure = choleskyFactor(a, n);
  const column = new Float64Array(n);
  for (let j = 0; j < n; j += 1) {
    column.fill(0);
    column[j] = 1;
    if (sure) choleskySolve(a, n, column);
    for (let k = 0; k < n; k += 1) {
      const size = (scale[j] as number) * (scale[k] as number);
      const at = (free[j] as number) * SWEEP_SIZE + (free[k] as number);
      whole[at] = sure ? (variance * (column[k] as number)) / size : j === k ? 1e30 : 0;
    }
  }
  return whole;
}

/** How far the free parameters move if a held C0 is off by its spread. */
export function heldDoubt(
  rows: SweepRows,
  { p }: SweepState,
  free: readonly number[],
  spread: number,
  to: Float64Array,
): void {
  const n = free.length;
  const a = new Float64Array((n + 1) ** 2);
  sweepNormal(rows, p, [...free, SWEEP.c0], a, new Float64Array(n + 1));
  const own = new Float64Array(n * n);
  const shift = new Float64Array(n);
  for (let j = 0; j < n; j += 1) {
    for (let k = 0; k <= j; k += 1) own[j * n + k] = a[j * (n + 1) + k] as number;
    shift[j] = -(a[n * (n + 1) + j] as number) * spread;
  }
  if (!choleskyFactor(own, n)) return;
  choleskySolve(own, n, shift);
  free.forEach((at, j) => {
    to[at] = shift[j] as number;
  });
  to[SWEEP.c0] = spread;
}
