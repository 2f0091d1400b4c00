/** How often a figure comes out within each step of its range. */
export interface Histogram {
  /** Lower end of the first step. */
  readonly from: number;
  readonly step: number;
  readonly counts: readonly number[];
  /** Beyond the ends: counted, not drawn. */
  readonly below: number;
  readonly above: number;
}

/** Steps that the middle nine tenths of the builds are to be cut into, about. */
const STEPS = 16;
/** How far beyond the middle nine tenths the drawing goes, in their own width. */
const BEYOND = 0.75;
const MOST = 60;

/**
 * A histogram in round steps.
 *
 * @param sorted values, rising
 * @param least step that makes sense, in the unit of the values
 */
export function histogram(sorted: ArrayLike<number>, least: number): Histogram {
  const n = sorted.length;
  const value = (fraction: number) =>
    sorted[Math.min(n - 1, Math.max(0, Math.round(fraction * (n - 1))))] ?? 0;
  const middle = Math.max(value(0.95) - value(0.05), least * 4);
  const step = round(Math.max(middle / STEPS, least));
  const low = Math.max(value(0), value(0.05) - BEYOND * middle);
  const high = Math.min(value(1), value(0.95) + BEYOND * middle);
  const first = Math.floor(low / step + 1e-9);
  const bins = Math.min(MOST, Math.max(1, Math.floor(high / step + 1e-9) - first + 1));
  const counts = new Array<number>(bins).fill(0);
  let below = 0;
  let above = 0;
  for (let i = 0; i < n; i += 1) {
    const bin = Math.floor((sorted[i] as number) / step + 1e-9) - first;
    if (bin < 0) below += 1;
    else if (bin >= bins) above += 1;
    else counts[bin] = (counts[bin] as number) + 1;
  }
  return { from: first * step, step, counts, below, above };
}

/** The next of 1, 2, 5 times a power of ten. */
function round(step: number): number {
  const power = 10 ** Math.floor(Math.log10(step) + 1e-9);
  return ([1, 2, 5].find((m) => m * power >= step * 0.999) ?? 10) * power;
}
