import { meanOf } from './statistics.ts';

/** A lot divided in two where that explains most of its spread. */
export interface Split {
  /** How many lie in the lower part. */
  readonly below: number;
  /** Means of the two parts, Hz. */
  readonly lower: number;
  readonly upper: number;
  /** Root mean square of the distances from the mean of all, and from the mean of the own part, Hz. */
  readonly whole: number;
  readonly within: number;
}

/** The division of sorted values into a lower and an upper part with the least spread within. */
export function bestSplit(sorted: readonly number[]): Split {
  const n = sorted.length;
  const mean = meanOf(sorted);
  const off = sorted.map((one) => one - mean);
  const whole = off.reduce((sum, one) => sum + one * one, 0);
  let [below, between, left] = [1, -1, 0];
  let sum = 0;
  for (let i = 1; i < n; i += 1) {
    sum += off[i - 1] ?? 0;
    const gain = (sum * sum * n) / (i * (n - i));
    if (gain > between) [below, between, left] = [i, gain, sum];
  }
  return {
    below,
    lower: mean + left / below,
    upper: mean - left / (n - below),
    whole: Math.sqrt(whole / n),
    within: Math.sqrt(Math.max(0, whole - between) / n),
  };
}

/** Fewest crystals of which humps can be told. */
export const FEWEST = 8;
/** Fewest in a hump. */
export const FEWEST_IN_ONE = 3;

/**
 * What ln(whole²/within²) of one normally spread lot exceeds once in twenty times.
 * @source L. Engelman and J. A. Hartigan, Percentage Points of a Test for Clusters, Journal of the
 * American Statistical Association 64, 1969 (approximation for the 5 % point)
 */
export const criticalValue = (n: number): number =>
  -Math.log(1 - 2 / Math.PI) + 1.645 / Math.sqrt(n - 2) + 2.4 / (n - 2);

/** How many lie in the middle third between the two means, and as near as that to each mean. */
export function valley(sorted: readonly number[], { lower, upper }: Split) {
  const half = (upper - lower) / 6;
  const near = (at: number) => sorted.filter((one) => Math.abs(one - at) <= half).length;
  return { middle: near((lower + upper) / 2), atLower: near(lower), atUpper: near(upper) };
}

/**
 * Whether a lot has two humps: the division in two explains more than chance would in a normally
 * spread lot, and there is a valley: in the middle third between the two means lie at most half as
 * many as around the poorer of them (a plain rule, so that an evenly spread lot isn't called two).
 */
export function hasTwoHumps(sorted: readonly number[], split: Split): boolean {
  const n = sorted.length;
  if (n < FEWEST || Math.min(split.below, n - split.below) < FEWEST_IN_ONE) return false;
  if (2 * Math.log(split.whole / split.within) <= criticalValue(n)) return false;
  const { middle, atLower, atUpper } = valley(sorted, split);
  return 2 * middle <= Math.min(atLower, atUpper);
}
