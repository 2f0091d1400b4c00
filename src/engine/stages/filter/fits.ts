import type { Ladder } from '../../circuit/ladder.ts';
import { LEAST_GAIN, type Passband, passband } from '../../circuit/passband.ts';
import { type Dip, passbandRipple } from '../../circuit/passbandRipple.ts';

/** How the same filter comes out in one of four ways. */
export interface Fit {
  readonly way: 'design' | 'exact' | 'nearest' | 'chosen';
  readonly ladder: Ladder;
  readonly band: Passband;
  readonly dip: Dip;
  /** Weighted sum of squares of the departure, dB². */
  readonly sum: number;
}

/** How closely edges are found, Hz: where equations are shown for them, and where none are. */
const FINE = 2e-9;
export const COARSE = 1e-5;

/** Analyses a ladder for the table of what its parts cost. */
export function fitOf(
  way: Fit['way'],
  ladder: Ladder,
  around: readonly number[],
  sum: number,
  tolerance = FINE,
): Fit {
  const band = passband(ladder, around, tolerance);
  return { way, ladder, band, dip: passbandRipple(ladder, around, band), sum };
}

/** A row of that table. */
export const fitRow = ({ way, band, dip, sum }: Fit, weights: number) => ({
  way,
  departure: Math.sqrt(sum / weights),
  // Where next to nothing comes through, these would be figures of rounding.
  ...(band.gain < LEAST_GAIN
    ? { width: null, ripple: null, loss: null }
    : { width: band.high - band.low, ripple: dip.depth, loss: -band.gain }),
});
