/** A chance found by trying, and between which ends the true one lies, 19 times in 20. */
export interface Chance {
  readonly share: number;
  readonly low: number;
  readonly high: number;
}

/** Standard normal deviation beyond which one in twenty lies. */
const Z = 1.959963985;

/**
 * Chance and its confidence interval from so many hits in so many trials. Unlike the plain
 * ±z·√(p(1 − p)/n) it also holds near 0 and 1.
 *
 * @source E. B. Wilson, Probable inference, J. Am. Stat. Assoc. 22, 1927, p. 209
 */
export function chance(hits: number, trials: number): Chance {
  const p = hits / trials;
  const middle = (p + Z ** 2 / (2 * trials)) / (1 + Z ** 2 / trials);
  const half =
    (Z / (1 + Z ** 2 / trials)) * Math.sqrt((p * (1 - p)) / trials + Z ** 2 / (4 * trials ** 2));
  // At the very ends rounding must not leave the share outside.
  return {
    share: p,
    low: Math.min(p, Math.max(0, middle - half)),
    high: Math.max(p, Math.min(1, middle + half)),
  };
}
