import { fft } from '../fft.ts';

/** A filter as weights of past (and a few coming) samples. */
export interface Taps {
  readonly re: Float64Array;
  readonly im: Float64Array;
  /** How many of them come before time 0. */
  readonly before: number;
}

/**
 * Weights of a filter from its response at evenly spaced frequencies; at those they give it exactly.
 * What rings longer than the inverse of the spacing comes out folded: the spacing must be finer than
 * the filter's ringing is long.
 *
 * @param re, im response from 0 upwards, then from the lowest negative frequency up to 0, a power of
 *   two; overwritten
 * @source closed form: inverse discrete Fourier transform
 */
export function tapsOf(re: Float64Array, im: Float64Array): Taps {
  const n = re.length;
  fft(re, im, true);
  const before = n / 8;
  const taps = { re: new Float64Array(n), im: new Float64Array(n), before };
  for (let i = 0; i < n; i += 1) {
    const from = (i - before + n) % n;
    taps.re[i] = (re[from] as number) / n;
    taps.im[i] = (im[from] as number) / n;
  }
  return taps;
}
