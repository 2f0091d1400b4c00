import type { Ladder } from '../../circuit/ladder.ts';
import type { LadderForWidth } from '../../circuit/ladderForWidth.ts';
import type { FittedParts } from './fitParts.ts';
import type { Fit } from './fits.ts';

/** The exact design, before parts are chosen: what the sheet's workings start from. */
export interface FilterDesign {
  readonly ladder: Ladder;
  /** Capacitance across every crystal to ground that is fitted, and that the greatest width has, F. */
  readonly across: number;
  readonly outcome: LadderForWidth['outcome'];
  /** −3 dB points of the exact design, Hz. */
  readonly low: number;
  readonly high: number;
  /** Loss at its best point and ripple, dB. */
  readonly loss: number;
  readonly ripple: number;
  /** −3 dB points of the widest ladder of the family, Hz. */
  readonly widestLow: number;
  readonly widestHigh: number;
  /** Deepest dip of the ladder as fitted, Hz; null where there is none. */
  readonly dipAt: number | null;
  /** Where the return loss within the passband is worst, Hz. */
  readonly worstMatchAt: number;
  /** Area under the response as a power ratio, Hz. */
  readonly area: number;
  /** Longest and shortest group delay between the −3 dB points, s. */
  readonly slowest: number;
  readonly fastest: number;
  /** What was fitted and what is nearest by itself; null where all is exact. */
  readonly parts: FittedParts | null;
  /** The same filter with other parts, and the weights that its departures were taken with. */
  readonly fits: readonly Fit[];
  readonly weights: number;
  /** Whether each mesh has the capacitor that its own crystal needs. */
  readonly each: boolean;
}
