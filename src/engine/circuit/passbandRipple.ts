import { bracketedMaximum } from './bracketedMaximum.ts';
import type { Ladder } from './ladder.ts';
import { gainAt } from './ladderGain.ts';
import type { Passband } from './passband.ts';

/** A dip as shallow as this is none, dB. */
const SHALLOWEST = 1e-3;

/** The deepest dip between two humps of a passband. */
export interface Dip {
  /** Hz; null where the passband is one hump. */
  readonly at: number | null;
  /** Below the best point, dB; 0 where there is no dip. */
  readonly depth: number;
}

/**
 * The ripple of a passband: how deep its deepest dip lies below its best point. The fall towards
 * the edges is no ripple.
 *
 * @param around frequencies to look at, Hz, rising, four or more for every hump
 */
export function passbandRipple(ladder: Ladder, around: readonly number[], band: Passband): Dip {
  const at = around.filter((f) => f > band.low && f < band.high);
  const gains = at.map((f) => gainAt(ladder, f));
  const gain = (i: number) => gains[i] ?? Number.NEGATIVE_INFINITY;
  let dip: Dip = { at: null, depth: 0 };
  for (let i = 1; i + 1 < at.length; i += 1) {
    // A hollow between samples that rise to both sides.
    if (gain(i) > gain(i - 1) || gain(i) > gain(i + 1)) continue;
    const [left, right] = [at[i - 1] ?? 0, at[i + 1] ?? 0];
    const lowest = bracketedMaximum((f) => -gainAt(ladder, f), left, right, (right - left) * 1e-6);
    const depth = band.gain + lowest.value;
    if (depth > Math.max(dip.depth, SHALLOWEST)) dip = { at: lowest.at, depth };
  }
  return dip;
}
