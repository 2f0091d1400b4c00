import { crystalSweepAt, NEPER, SWEEP, SWEEP_POINT, SWEEP_SIZE } from './crystalSweep.ts';

/** The rows of a sweep, ready to be fitted. */
export interface SweepRows {
  /** Hz above `reference`, rising. */
  readonly offset: Float64Array;
  /** dB */
  readonly level: Float64Array;
  /** rad */
  readonly phase: Float64Array | null;
  /** What each row weighs in the sum of squares, 0 to 1. */
  readonly weight: Float64Array;
  /** How far each row is trusted: 1, and less where it is far off the rest. */
  readonly trust: Float64Array;
  /** Hz */
  readonly reference: number;
  /** Ω */
  readonly rt: number;
}

/**
 * Weighted sum of squares at p, nepers² (radians count as nepers).
 *
 * @param free which parameters are free, by `SWEEP`
 * @param a receives the lower triangle of JᵀWJ
 * @param g receives JᵀWr
 */
export function sweepNormal(
  rows: SweepRows,
  p: Float64Array,
  free: readonly number[],
  a: Float64Array,
  g: Float64Array,
): number {
  const n = free.length;
  const { offset, level, phase, weight, reference, rt } = rows;
  a.fill(0);
  g.fill(0);
  let sum = 0;
  for (let i = 0; i < offset.length; i += 1) {
    crystalSweepAt(p, reference, offset[i] as number, rt, point);
    const w = weight[i] as number;
    for (let part = 0; part < (phase === null ? 1 : 2); part += 1) {
      const r =
        part === 0
          ? (level[i] as number) / NEPER - (point[0] as number)
          : turned(((phase as Float64Array)[i] as number) - (point[1] as number));
      sum += w * r * r;
      const from = 2 + part * SWEEP_SIZE;
      for (let j = 0; j < n; j += 1) {
        const slope = w * (point[from + (free[j] as number)] as number);
        g[j] = (g[j] as number) + slope * r;
        for (let k = 0; k <= j; k += 1) {
          const at = j * n + k;
          a[at] = (a[at] as number) + slope * (point[from + (free[k] as number)] as number);
        }
      }
    }
  }
  return sum;
}

/**
 * What the rows say of each parameter, the others held: a mean of p + r/slope, weighted by the
 * square of the slope. fs in Hz, Lm in H.
 */
export function sweepMeans(rows: SweepRows, p: Float64Array): Float64Array {
  const { offset, level, phase, weight, reference, rt } = rows;
  const pull = new Float64Array(SWEEP_SIZE);
  const size = new Float64Array(SWEEP_SIZE);
  for (let i = 0; i < offset.length; i += 1) {
    crystalSweepAt(p, reference, offset[i] as number, rt, point);
    const w = weight[i] as number;
    for (let part = 0; part < (phase === null ? 1 : 2); part += 1) {
      const r =
        part === 0
          ? (level[i] as number) / NEPER - (point[0] as number)
          : turned(((phase as Float64Array)[i] as number) - (point[1] as number));
      for (let k = 0; k < SWEEP_SIZE; k += 1) {
        const slope = point[2 + part * SWEEP_SIZE + k] as number;
        pull[k] = (pull[k] as number) + w * slope * r;
        size[k] = (size[k] as number) + w * slope * slope;
      }
    }
  }
  const lm = Math.exp(p[SWEEP.lnLm] as number);
  return p.map((value, k) => {
    const off = (pull[k] as number) / (size[k] || 1);
    if (k === SWEEP.fs) return reference + value + off;
    return k === SWEEP.lnLm ? lm + lm * off : value + off;
  });
}

/** An angle without whole turns. */
export const turned = (x: number): number => x - 2 * Math.PI * Math.round(x / (2 * Math.PI));

/** How many rows there are, those that count less as part of one; the phase counts for itself. */
export const rowsThatCount = ({ trust, phase }: SweepRows): number =>
  trust.reduce((sum, w) => sum + w, 0) * (phase === null ? 1 : 2);

/** The row that passes most. */
export function highestRow(level: Float64Array): number {
  let at = 0;
  level.forEach((x, i) => {
    if (x > (level[at] as number)) at = i;
  });
  return at;
}

const point = new Float64Array(SWEEP_POINT);
