import { crystalSweepAt, NEPER, SWEEP_POINT, SWEEP_SIZE } from '../../circuit/crystalSweep.ts';
import type { Fitted } from './fitted.ts';

/** Points that a chart of the sweep has at most. */
const MOST = 300;

/** Measured, fitted and left over, at no more rows than a chart needs; the peak keeps all of its own. */
export function sweepCurve(
  { frequency, level, fit }: Fitted,
  resistance: number,
): { frequency: Float64Array; measured: Float64Array; fitted: Float64Array; left: Float64Array } {
  const peak = level.indexOf(Math.max(...level));
  const rows = chosen(level.length, peak);
  const out = new Float64Array(SWEEP_POINT);
  const p = new Float64Array(SWEEP_SIZE);
  p.set([0, Math.log(fit.lm), fit.rm, fit.c0, fit.shunt, fit.level]);
  const at = Float64Array.from(rows, (i) => frequency[i] as number);
  const measured = Float64Array.from(rows, (i) => level[i] as number);
  const fitted = at.map((f) => {
    crystalSweepAt(p, fit.fs, f - fit.fs, resistance, out);
    return (out[0] as number) * NEPER;
  });
  return {
    frequency: at,
    measured,
    fitted,
    left: measured.map((x, i) => x - (fitted[i] as number)),
  };
}

/** Half of the rows next to the peak, the rest evenly from what remains. */
function chosen(count: number, peak: number): number[] {
  const all = Array.from({ length: count }, (_, i) => i);
  if (count <= MOST) return all;
  const near = MOST >> 2;
  const far = all.filter((i) => Math.abs(i - peak) > near);
  const every = far.length / (MOST - 2 * near - 1);
  const kept = new Set(
    Array.from({ length: MOST - 2 * near - 1 }, (_, k) => far[Math.floor(k * every)]),
  );
  return all.filter((i) => Math.abs(i - peak) <= near || kept.has(i));
}
