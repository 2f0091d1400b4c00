import type { Ladder } from '../../circuit/ladder.ts';
import type { Passband } from '../../circuit/passband.ts';
import { skirts } from './skirts.ts';

/** How far down the curve is drawn, dB. */
const DEPTH = 90;
/** Points in each skirt and in the passband. */
const SKIRT = 120;
const BAND = 240;

/**
 * Frequencies for a curve of the response: half of the points in the passband and a little beside
 * it, the others out to 90 dB down, at least one and at most four widths away. Hz.
 */
export function responseFrequencies(ladder: Ladder, band: Passband): Float64Array {
  const width = band.high - band.low;
  const [low, high] = skirts(ladder, band, DEPTH);
  const away = (distance: number | null) => Math.min(Math.max(distance ?? 1e99, width), 4 * width);
  const first = band.low - away(low === null ? null : band.low - low);
  const last = band.high + away(high === null ? null : high - band.high);
  const left = band.low - width / 12;
  const right = band.high + width / 12;
  const all = new Float64Array(2 * SKIRT + BAND + 1);
  for (let i = 0; i < SKIRT; i += 1) {
    all[i] = first + ((left - first) * i) / SKIRT;
    all[SKIRT + BAND + 1 + i] = right + ((last - right) * (i + 1)) / SKIRT;
  }
  for (let i = 0; i <= BAND; i += 1) all[SKIRT + i] = left + ((right - left) * i) / BAND;
  return all;
}
