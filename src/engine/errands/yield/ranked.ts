import type { Factor, Kind } from './factors.ts';
import type { Regression } from './regression.ts';
import type { Spreads } from './spreads.ts';
import { DRAW_UNIT } from './sums.ts';

/** What one part has to do with a figure's variance. */
export interface PartShare {
  readonly kind: Kind;
  /** Which of its kind, from 0. */
  readonly position: number;
  /** Of the figure's variance, 0 to 1. */
  readonly share: number;
  /**
   * How much the figure changes, in Hz or dB, with the part: by 1 Hz of a crystal's frequency, by
   * 1 % of anything else.
   */
  readonly slope: number;
}

/** All parts by what they have to do with a figure, the worst first; none that does not vary. */
export function ranked(
  factors: readonly Factor[],
  { slopes, shares }: Regression,
  unit: number,
  spreads: Spreads,
): PartShare[] {
  return factors
    .map(({ kind, position }, i) => {
      const spread = spreadOf(kind, spreads);
      const perDraw = (slopes[i] ?? 0) * unit * DRAW_UNIT;
      return {
        kind,
        position,
        share: spread > 0 ? (shares[i] ?? 0) : 0,
        slope: spread > 0 ? (perDraw / spread) * (kind === 'frequency' ? 1 : 0.01) : 0,
      };
    })
    .filter(({ share }) => share > 0)
    .sort((a, b) => b.share - a.share);
}

/** What one unit of a draw stands for: Hz for a frequency, a fraction for all else. */
export function spreadOf(kind: Kind, spreads: Spreads): number {
  if (kind === 'coupling' || kind === 'series') return spreads.capacitors;
  return spreads[kind];
}
