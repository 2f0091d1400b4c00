import { choleskyFactor, choleskySolve } from './cholesky.ts';
import { crystalSweepAt, NEPER, SWEEP, SWEEP_POINT } from './crystalSweep.ts';
import { highestRow, type SweepRows, sweepNormal, turned } from './sweepRows.ts';

/** Where a fit has got to. */
export interface SweepState {
  p: Float64Array;
  /** Weighted sum of squares, nepers². */
  sum: number;
  rest: boolean;
}

/** The lowest sum of squares reached from any of the starts. */
export function lowest(
  rows: SweepRows,
  starts: readonly Float64Array[],
  free: readonly number[],
): SweepState {
  const all = rows.weight.reduce((a, b) => a + b, 0);
  let best: SweepState | null = null;
  for (const start of starts) {
    const state = descend(rows, { p: start.slice(), sum: 0, rest: false }, free, best?.sum);
    if (best === null || state.sum < best.sum * (1 - 1e-6)) best = state;
    if (best.rest && Math.sqrt(best.sum / all) * NEPER < 0.3) break;
  }
  if (best === null) throw new RangeError('a fit has no start');
  // Near fp a resistance below zero looks like the same above: a hollow of its own in the sum.
  const rm = best.p[SWEEP.rm] as number;
  if (rm >= 0) return best;
  const turnedUp = descend(rows, { ...best, p: best.p.with(SWEEP.rm, -rm) }, free);
  return turnedUp.sum < best.sum ? turnedUp : best;
}

/** Goes down from one start until it rests, or until another start has been lower for long. */
export function descend(
  rows: SweepRows,
  state: SweepState,
  free: readonly number[],
  rival = 0,
): SweepState {
  const n = free.length;
  const a = new Float64Array(n * n);
  const damped = new Float64Array(n * n);
  const g = new Float64Array(n);
  const step = new Float64Array(n);
  if (rows.phase !== null && free.includes(SWEEP.phase)) startPhase(rows, state.p);
  let sum = sweepNormal(rows, state.p, free, a, g);
  let lambda = 1e-3;
  let { p } = state;
  for (let round = 0; round < 60; round += 1) {
    if (round === 15 && rival > 0 && sum > 100 * rival) break;
    damped.set(a);
    for (let j = 0; j < n; j += 1) damped[j * n + j] = (a[j * n + j] as number) * (1 + lambda);
    step.set(g);
    if (!choleskyFactor(damped, n)) {
      lambda = Math.max(lambda * 10, 1e-6);
      if (lambda > 1e12) break;
      continue;
    }
    choleskySolve(damped, n, step);
    const next = p.slice();
    let gain = 0;
    for (let j = 0; j < n; j += 1) {
      const at = free[j] as number;
      const most = mostOf(at, p);
      const move = Math.max(-most, Math.min(most, step[j] as number));
      next[at] = (next[at] as number) + move;
      gain += move * (g[j] as number);
    }
    // Resistance of the whole loop stays above zero.
    next[SWEEP.rm] = Math.max(next[SWEEP.rm] as number, -1.9 * rows.rt);
    const [a2, g2] = [new Float64Array(n * n), new Float64Array(n)];
    const sum2 = sweepNormal(rows, next, free, a2, g2);
    if (sum2 <= sum) {
      p = next;
      const before = sum;
      sum = sum2;
      a.set(a2);
      g.set(g2);
      // At rest where a step, hardly damped, would gain nothing that the noise does not drown.
      const little = gain <= 1e-9 * before || before - sum2 <= 1e-13 * before;
      if (little && lambda <= 1e-6) return { p, sum, rest: true };
      lambda = Math.max(lambda / 10, 1e-12);
    } else {
      if (gain <= 1e-12 * sum || (gain <= 1e-9 * sum && lambda <= 1e-6)) {
        return { p, sum, rest: true };
      }
      lambda *= 8;
      if (lambda > 1e12) return { p, sum, rest: false };
    }
  }
  return { p, sum, rest: false };
}

/** Undamped steps from near the bottom, until the figures stand still to the last digits. */
export function polish(rows: SweepRows, state: SweepState, free: readonly number[]): SweepState {
  const n = free.length;
  const a = new Float64Array(n * n);
  const g = new Float64Array(n);
  let now = state;
  for (let round = 0; round < 20; round += 1) {
    // The weights may have changed since the sum was taken.
    now = { ...now, sum: sweepNormal(rows, now.p, free, a, g) };
    const scale = free.map((_, j) => Math.sqrt(a[j * n + j] as number) || 1);
    for (let j = 0; j < n; j += 1) {
      g[j] = (g[j] as number) / (scale[j] as number);
      for (let k = 0; k <= j; k += 1) {
        a[j * n + k] = (a[j * n + k] as number) / ((scale[j] as number) * (scale[k] as number));
      }
    }
    if (!choleskyFactor(a, n)) return now;
    choleskySolve(a, n, g);
    const step = free.map((_, j) => (g[j] as number) / (scale[j] as number));
    const off = Math.max(...g.map(Math.abs)) / (Math.sqrt(now.sum) + 1e-30);
    const next = now.p.slice();
    let part = 1;
    let sum = Number.POSITIVE_INFINITY;
    for (; part > 0.01; part /= 2) {
      free.forEach((at, j) => {
        next[at] = (now.p[at] as number) + part * (step[j] as number);
      });
      sum = sweepNormal(rows, next, free, a, g);
      if (sum <= now.sum * (1 + 1e-9) + 1e-24) break;
    }
    if (part <= 0.01) return now;
    now = { ...now, p: next, sum };
    if (off < 1e-10) break;
  }
  return now;
}

/** The longest step of a parameter: a longer one could carry fp past a row, the sum over a ridge. */
function mostOf(at: number, p: Float64Array): number {
  if (at === SWEEP.lnLm) return 1;
  if (at === SWEEP.shunt) return 5e-12;
  if (at === SWEEP.c0) return 0.3 * Math.max(Math.abs(p[SWEEP.c0] as number), 3e-13);
  return Number.POSITIVE_INFINITY;
}

/** A constant phase to start with: that of the highest rows. */
function startPhase(rows: SweepRows, p: Float64Array): void {
  const peak = highestRow(rows.level);
  crystalSweepAt(p, rows.reference, rows.offset[peak] as number, rows.rt, point);
  const off = ((rows.phase as Float64Array)[peak] as number) - (point[1] as number);
  p[SWEEP.phase] = turned((p[SWEEP.phase] as number) + off);
}

const point = new Float64Array(SWEEP_POINT);
