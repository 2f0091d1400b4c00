/** Points at which each build is looked at. */
export const POINTS = 201;

/** Points in each skirt; the others stand close, over the passband and its edges. */
const SKIRT = 24;
/** How far beyond the −3 dB points the close ones go, and the others, in widths. */
const NEAR = 0.22;
const FAR = 1.25;

/**
 * Frequencies at which builds of a filter are looked at, Hz, rising: close over the passband and
 * where its edges may come to lie, closer at the edges than in the middle as the humps are.
 *
 * @param low, high −3 dB points of the filter as wanted, Hz
 */
export function sampleFrequencies(low: number, high: number): Float64Array {
  const width = high - low;
  const middle = (low + high) / 2;
  const reach = (0.5 + NEAR) * width;
  const near = POINTS - 2 * SKIRT;
  const all = new Float64Array(POINTS);
  for (let i = 0; i < near; i += 1) {
    const t = (2 * i) / (near - 1) - 1;
    all[SKIRT + i] = middle + reach * crowded(t);
  }
  const out = (FAR - NEAR) * width;
  for (let i = 0; i < SKIRT; i += 1) {
    // Wider and wider apart.
    const t = (i + 1) / SKIRT;
    const away = reach + out * t * (0.45 + 0.55 * t);
    all[SKIRT - 1 - i] = middle - away;
    all[SKIRT + near + i] = middle + away;
  }
  return all;
}

/** −1…1 onto itself, two thirds apart in its closest places, which are at the edges. */
const crowded = (t: number): number => 0.62 * t + 3.707 * (t ** 5 / 5 - 0.3 * t ** 3 + 0.2025 * t);
