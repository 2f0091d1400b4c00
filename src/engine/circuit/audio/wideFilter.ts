import { basebandFrequencies } from './baseband.ts';
import { type Taps, tapsOf } from './taps.ts';

/** A wide filter, as a good station of any make has it: flat between these, nothing else. Hz. */
export const WIDE = { low: 100, high: 3000 } as const;

/** Width of its edges, Hz: half a cosine. */
const EDGE = 100;

/**
 * A wide filter against its carrier.
 *
 * @param side on which side of the carrier the sideband lies
 * @param rate samples a second
 */
export function wideFilter(side: 'lower' | 'upper', rate: number): Taps {
  const offsets = basebandFrequencies(0, rate);
  const n = offsets.length;
  const re = new Float64Array(n);
  offsets.forEach((offset, i) => {
    const f = side === 'lower' ? -offset : offset;
    re[(i + n / 2) % n] = rise(f - WIDE.low) * rise(WIDE.high - f);
  });
  return tapsOf(re, new Float64Array(n));
}

/** From 0 to 1 around an edge, 0.71 at it. */
function rise(over: number): number {
  const t = Math.min(1, Math.max(0, over / EDGE + 0.5));
  return Math.sin((Math.PI / 2) * t);
}
