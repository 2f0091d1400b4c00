import { POINTS } from './baseband.ts';
import { type Taps, tapsOf } from './taps.ts';

/**
 * What coupling capacitors and a speaker leave of audio: one resistor and capacitor at each edge,
 * (jf/f₁)/(1 + jf/f₁) · 1/(1 + jf/f₂).
 *
 * @param low Hz, −3 dB; 0 for none
 * @param high Hz, −3 dB; Infinity for none
 * @param rate samples a second
 * @source closed form: RC high-pass and low-pass
 */
export function audioEdges(low: number, high: number, rate: number): Taps {
  const re = new Float64Array(POINTS);
  const im = new Float64Array(POINTS);
  for (let i = 0; i < POINTS; i += 1) {
    const f = (rate * (i < POINTS / 2 ? i : i - POINTS)) / POINTS;
    const up = low > 0 ? f / low : Infinity;
    const down = f / high;
    // (j·up)/(1 + j·up) is 1/(1 − j/up); at f = 0 nothing passes.
    if (low > 0 && f === 0) continue;
    const lowRe = 1;
    const lowIm = low > 0 ? -1 / up : 0;
    const dr = lowRe - lowIm * down;
    const di = lowIm + lowRe * down;
    const size = dr * dr + di * di;
    re[i] = dr / size;
    im[i] = -di / size;
  }
  // At half the rate positive and negative frequencies are one: real.
  im[POINTS / 2] = 0;
  return tapsOf(re, im);
}
