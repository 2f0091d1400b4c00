import { bracketedRoot } from './bracketedRoot.ts';
import { type Crystal, seriesResonance } from './crystal.ts';
import { widestHalfSpan } from './reactanceSpan.ts';

/**
 * The dual of `reactanceSpan`, for crystals to ground: the crystal's inductive susceptance y = −B is
 * the frequency variable. It falls from +∞ at fs through 0 at fp to −ωC0 far above; the passband
 * runs from y = h(a + 1) down to y = h(a − 1), h in S. C0 counts all that lies across the crystal.
 */

/**
 * The frequency above fs at which the lossless crystal has a given inductive susceptance, Hz.
 *
 * With u = (f/fs)² − 1, r = C0/Cm and t = y/(ωs·Cm): 1 = u·(r + t/√(1 + u)).
 *
 * @param susceptance −B, S; above −0.9·ωs·C0
 */
export function frequencyAtSusceptance(crystal: Crystal, susceptance: number): number {
  const fs = seriesResonance(crystal);
  const t = susceptance / (2 * Math.PI * fs * crystal.cm);
  const r = crystal.c0 / crystal.cm;
  let u = 1 / (r + t);
  for (let i = 0; i < 60; i += 1) {
    const root = Math.sqrt(1 + u);
    const off = 1 - u * (r + t / root);
    const slope = (u * t) / (2 * root * root * root) - r - t / root;
    // Never past half of the way to fs.
    const next = Math.max(u - off / slope, u / 2);
    if (Math.abs(next - u) <= 1e-15 * next) return fs * Math.sqrt(1 + next);
    u = next;
  }
  return fs * Math.sqrt(1 + u);
}

/** Frequencies at which to look for humps and edges, as `spanFrequencies` does. Hz, rising. */
export function susceptanceFrequencies(
  crystal: Crystal,
  largestSum: number,
  h: number,
  n: number,
  margin = 0.1,
): number[] {
  const inner = 4 * n + 8;
  const least = -0.9 * 2 * Math.PI * seriesResonance(crystal) * crystal.c0;
  const at: number[] = [];
  for (let i = 0; i <= inner; i += 1) {
    const omega = 1.04 * Math.cos((Math.PI * i) / inner);
    at.push(frequencyAtSusceptance(crystal, Math.max(h * (largestSum + omega), least)));
  }
  const [low, high] = [at[0] ?? 0, at[inner] ?? 0];
  const outer = Math.ceil(margin * 20);
  for (let i = 1; i <= outer; i += 1) {
    const out = ((high - low) * margin * i) / outer;
    at.unshift(low - out);
    at.push(high + out);
  }
  return at;
}

/**
 * The h (S) at which the lossless passband is widest; null where it widens without end.
 *
 * X = 1/y makes of y = h(a ± 1) the reactances of the series form with 1/(h(a² − 1)) for its h.
 */
export function widestHalfSusceptance(crystal: Crystal, largestSum: number): number | null {
  const dual = widestHalfSpan(crystal, largestSum);
  return dual === null ? null : 1 / (dual * (largestSum ** 2 - 1));
}

/** Without a widest, h stops where the upper edge is far above fp or coupling and holder are alike, S. */
export function largestHalfSusceptance(crystal: Crystal, largestSum: number): number {
  const holder = 2 * Math.PI * seriesResonance(crystal) * crystal.c0;
  return Math.min(2 * holder, (0.5 * holder) / (1 - largestSum));
}

/**
 * The smallest h (S) whose lossless passband is as wide as asked for; null if none up to `most` is.
 *
 * @param width Hz
 * @param most the h of the widest, S
 */
export function halfSusceptanceFor(
  crystal: Crystal,
  largestSum: number,
  width: number,
  most: number,
): number | null {
  const short = (h: number) =>
    frequencyAtSusceptance(crystal, h * (largestSum - 1)) -
    frequencyAtSusceptance(crystal, h * (largestSum + 1)) -
    width;
  if (short(most) < 0) return null;
  return bracketedRoot(short, 0, most, most * 1e-14);
}
