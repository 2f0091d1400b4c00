import type { LimitCurve } from './softLimit.ts';

/** A final over its drive, rising: dB against full drive, W at the antenna, phase of the output, rad. */
export interface FinalOverDrive {
  readonly drive: Float64Array;
  readonly power: Float64Array;
  readonly phase: Float64Array;
}

/** Points of the curve: straight lines between so many are nowhere off by a thousandth. */
const POINTS = 400;

/**
 * A final's sizes (AM–AM) and phases (AM–PM) at even distances from 0, so that full drive is 1 at the
 * input and at the output. Under the lowest drive that is known it is straight.
 */
export function finalCurve({ drive, power, phase }: FinalOverDrive): LimitCurve {
  const sizes = drive.map((one) => 10 ** (one / 20));
  const most = sizes[sizes.length - 1] ?? 1;
  const step = most / POINTS;
  const volts = power.map(Math.sqrt);
  const full = between(sizes, volts, 1);
  const given = new Float64Array(POINTS + 1);
  const turn = new Float64Array(POINTS + 1);
  const least = sizes[0] ?? 1;
  for (let i = 0; i <= POINTS; i += 1) {
    const size = i * step;
    turn[i] = between(sizes, phase, size);
    given[i] = (Math.min(1, size / least) * between(sizes, volts, size)) / full;
  }
  return { step, given, turn };
}

/** Straight between points, as at the ends beyond them. */
function between(x: Float64Array, y: Float64Array, at: number): number {
  const last = x.length - 1;
  if (at <= (x[0] ?? 0)) return y[0] ?? 0;
  if (at >= (x[last] ?? 0)) return y[last] ?? 0;
  let k = 0;
  while ((x[k + 1] ?? 0) < at) k += 1;
  const [a, b] = [x[k] ?? 0, x[k + 1] ?? 0];
  const [c, d] = [y[k] ?? 0, y[k + 1] ?? 0];
  return c + ((d - c) * (at - a)) / (b - a);
}
