import { type Crystal, seriesResonance } from '../../circuit/crystal.ts';

/**
 * The greatest lossless bandwidth of a ladder, Hz; null for a largest sum up to 1, where there is
 * no limit. See `widestHalfSpan`: there f = fs·√(1 + u) with r·u = y(a ± 1)/(1 + y(a ± 1)).
 */
export function reachLossless(crystal: Crystal, a: number): number | null {
  if (a <= 1) return null;
  const s = Math.sqrt((a + 1) / (a - 1));
  const y = (s - 1) / (a + 1 - s * (a - 1));
  const r = crystal.c0 / crystal.cm;
  const root = (x: number) => Math.sqrt(1 + x / (1 + x) / r);
  return seriesResonance(crystal) * (root(y * (a + 1)) - root(y * (a - 1)));
}
