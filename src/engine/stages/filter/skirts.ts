import type { Ladder } from '../../circuit/ladder.ts';
import { type Passband, skirt } from '../../circuit/passband.ts';

/** The two frequencies at which a ladder is so far down, Hz; null where it does not get there. */
export type Skirts = readonly [low: number | null, high: number | null];

/** How far from the passband an edge is still looked for, in widths. */
const FURTHEST = 40;

/**
 * Where a ladder has fallen by so many dB from its best point, going outwards from its −3 dB points.
 *
 * @param down dB
 */
export function skirts(ladder: Ladder, band: Passband, down: number): Skirts {
  const width = band.high - band.low;
  const level = band.gain - down;
  const at = (from: number, step: number) =>
    skirt(ladder, level, from, step, FURTHEST * width, 2e-9);
  return [at(band.low, -width / 16), at(band.high, width / 16)];
}
