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

/** Families that fall so gently that there is nothing for loss to round. */
export const CORNERLESS: readonly Family[] = [
  'bessel',
  'gaussian',
  'linear005',
  'linear05',
  'equal',
];

/**
 * How much lower the response of a ladder is near its edges than its family says, dB: four fifths
 * of the way, by reactance (with crystals to ground by susceptance), from the middle to each −3 dB
 * point. Null for families without corners to keep.
 *
 * @param crystal with all that lies across it counted as C0
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
  if (CORNERLESS.includes(family)) return null;
  const own = couplingLoss(couplings, CORNER);
  const allowed = Math.max(own, family === 'chebyshev' ? ripple : (couplings.ripple ?? 0));
  const at = cornerFrequencies(crystal, low, high, ladder.form === 'shunt');
  const most = Math.max(...at.map((f) => gain - gainAt(ladder, f) - allowed));
  return most < LEAST ? 0 : most;
}

/** The two frequencies at which the corners are looked at, Hz. */
function cornerFrequencies(
  crystal: Crystal,
  low: number,
  high: number,
  toGround: boolean,
): [number, number] {
  const fs = seriesResonance(crystal);
  const unit = 2 * Math.PI * fs * crystal.cm;
  const r = crystal.c0 / crystal.cm;
  const x = [low, high].map((f) => crystalReactance(crystal, f) * unit);
  const [a = 0, b = 0] = toGround ? x.map((one) => 1 / one) : x;
  const middle = (a + b) / 2;
  const half = ((b - a) / 2) * CORNER;
  // Near fs, f = fs·√(1 + x/(1 + r·x)) is the crystal's reactance turned round.
  const at = (one: number) => fs * Math.sqrt(1 + (toGround ? 1 / (one + r) : one / (1 + r * one)));
  return [at(middle - half), at(middle + half)];
}
