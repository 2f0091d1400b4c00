import { type Couplings, couplingLoss, type Family } from '../../circuit/couplings.ts';
import { type Crystal, crystalReactance, seriesResonance } from '../../circuit/crystal.ts';
import type { Ladder } from '../../circuit/ladder.ts';
import { gainAt } from '../../circuit/ladderGain.ts';

/** How far out towards the edges the corners are looked at, by reactance. */
export const CORNER = 0.8;

/** Rounding up to which the corners count as kept, and from which as lost, dB. */
export const KEPT = 1.25;
export const LOST = 2.5;
/** Less than this is none, dB. */
export const LEAST = 0.05;

/**
 * How much lower the response of a ladder is near its edges than its family says, dB: four fifths
 * of the way, by reactance, from the middle to each −3 dB point. Null for equal capacitors, which
 * have no corners to keep.
 *
 * @param low, high its −3 dB points, Hz
 * @param gain at its best point, dB
 */
export function cornersRounded(
  ladder: Ladder,
  crystal: Crystal,
  family: Family,
  couplings: Couplings,
  ripple: number,
  { low, high, gain }: { low: number; high: number; gain: number },
): number | null {
  if (family === 'equal') return null;
  const own = couplingLoss(couplings, CORNER);
  const allowed = family === 'chebyshev' ? Math.max(own, ripple) : own;
  const fallen = cornerFrequencies(crystal, low, high).map((f) => gain - gainAt(ladder, f));
  const most = Math.max(...fallen.map((one) => one - allowed));
  return most < LEAST ? 0 : most;
}

/** The two frequencies at which the corners are looked at, Hz. */
function cornerFrequencies(crystal: Crystal, low: number, high: number): [number, number] {
  const fs = seriesResonance(crystal);
  const unit = 2 * Math.PI * fs * crystal.cm;
  const r = crystal.c0 / crystal.cm;
  const xLow = crystalReactance(crystal, low) * unit;
  const xHigh = crystalReactance(crystal, high) * unit;
  const middle = (xLow + xHigh) / 2;
  const half = ((xHigh - xLow) / 2) * CORNER;
  // Near fs, f = fs·√(1 + x/(1 + r·x)) is the crystal's reactance turned round.
  const at = (x: number) => fs * Math.sqrt(1 + x / (1 + r * x));
  return [at(middle - half), at(middle + half)];
}
