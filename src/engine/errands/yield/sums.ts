/**
 * Sums for a linear regression over many builds. Draws and figures are first rounded to whole
 * numbers of a small unit: sums of whole numbers are exact, so the order in which builds are
 * counted, and who counts them, cannot change the outcome by a single bit.
 */
export interface Sums {
  /** Number of draws that are looked at. */
  readonly draws: number;
  /** Number of figures. */
  readonly figures: number;
  /** Products of the draws with each other (upper half), of figures with draws; plain sums. */
  readonly xx: Float64Array;
  readonly xy: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly yy: Float64Array;
}

/** Whole numbers for one unit of a draw. */
export const DRAW_UNIT = 256;
/** Largest whole number that a figure may become. */
const MOST = 2 ** 17;

export const blankSums = (draws: number, figures: number): Sums => ({
  draws,
  figures,
  xx: new Float64Array(draws * draws),
  xy: new Float64Array(draws * figures),
  x: new Float64Array(draws),
  y: new Float64Array(figures),
  yy: new Float64Array(figures),
});

/**
 * Counts one build.
 *
 * @param x its draws in whole units; @param y its figures in whole units
 */
export function count(sums: Sums, x: Int32Array, y: Int32Array): void {
  const { draws, figures, xx, xy } = sums;
  for (let i = 0; i < draws; i += 1) {
    const a = x[i] as number;
    sums.x[i] = (sums.x[i] as number) + a;
    const row = i * draws;
    for (let j = i; j < draws; j += 1) {
      xx[row + j] = (xx[row + j] as number) + a * (x[j] as number);
    }
  }
  for (let k = 0; k < figures; k += 1) {
    const b = y[k] as number;
    sums.y[k] = (sums.y[k] as number) + b;
    sums.yy[k] = (sums.yy[k] as number) + b * b;
    const row = k * draws;
    for (let i = 0; i < draws; i += 1) {
      xy[row + i] = (xy[row + i] as number) + b * (x[i] as number);
    }
  }
}

/** A departure in whole units. */
export const whole = (value: number, unit: number): number =>
  Math.max(-MOST, Math.min(MOST, Math.round(value / unit)));

/** Sums of several shares put together. */
export function added(parts: readonly Sums[]): Sums {
  const first = parts[0] as Sums;
  const all = blankSums(first.draws, first.figures);
  for (const part of parts) {
    for (const key of ['xx', 'xy', 'x', 'y', 'yy'] as const) {
      const [into, from] = [all[key], part[key]];
      for (let i = 0; i < into.length; i += 1) into[i] = (into[i] as number) + (from[i] as number);
    }
  }
  return all;
}
