/** Figures of a lot from its values in rising order; at least one. */
export function medianOf(sorted: readonly number[]): number {
  const half = sorted.length / 2;
  const low = sorted[Math.ceil(half) - 1] ?? 0;
  const high = sorted[Math.floor(half)] ?? 0;
  return (low + high) / 2;
}

/** Mean, by way of the distances from the first, so that no digits are lost. */
export function meanOf(values: readonly number[]): number {
  const first = values[0] ?? 0;
  return first + values.reduce((sum, one) => sum + (one - first), 0) / values.length;
}

/** Root mean square of the distances from the mean. */
export function rmsAbout(values: readonly number[], mean: number): number {
  return Math.sqrt(values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / values.length);
}

/** The median of what is there; null where nothing is. */
export function medianGiven(values: readonly (number | null)[]): number | null {
  const given = values.filter((one) => one !== null).sort((a, b) => a - b);
  return given.length === 0 ? null : medianOf(given);
}

/** The n neighbours that lie closest together: place of the lowest among the sorted values. */
export function closest(sorted: readonly number[], n: number): number {
  let best = 0;
  const span = (i: number) => (sorted[i + n - 1] ?? 0) - (sorted[i] ?? 0);
  for (let i = 1; i + n <= sorted.length; i += 1) if (span(i) < span(best)) best = i;
  return best;
}
