import { fft } from './fft.ts';
import type { Ladder } from './ladder.ts';
import { ladderResponse } from './ladderResponse.ts';

/** Points of the transform. */
const POINTS = 4096;
/** How far to look in frequency, in widths; and in time, in turns of the width. */
const SPAN = 64;
const LAST = 20;

/** The envelope at a filter's output when a steady tone is switched on at its input. */
export interface EnvelopeStep {
  /** s, rising from 0. */
  readonly time: Float64Array;
  /** Of the steady state, which is 1. */
  readonly level: Float64Array;
}

/**
 * What becomes of a tone in the middle of the passband that is switched on at once: the response
 * moved down by the middle frequency, transformed into time and summed.
 *
 * @param centre of the passband, Hz
 * @param width of the passband, Hz; time goes on to 20 divided by it
 * @source closed form: inverse Fourier transform; step as the running sum of the impulse response
 */
export function envelopeStep(ladder: Ladder, centre: number, width: number): EnvelopeStep {
  const span = Math.min(SPAN * width, 1.6 * centre);
  const frequency = Float64Array.from(
    { length: POINTS },
    (_, i) => centre + (span * (i - POINTS / 2)) / POINTS,
  );
  const gain = new Float64Array(POINTS);
  const phase = new Float64Array(POINTS);
  ladderResponse(ladder, frequency, { gain, phase });
  const re = new Float64Array(POINTS);
  const im = new Float64Array(POINTS);
  for (let i = 0; i < POINTS; i += 1) {
    const size = 10 ** ((gain[i] as number) / 20);
    const k = (i + POINTS / 2) % POINTS;
    re[k] = size * Math.cos(phase[i] as number);
    im[k] = size * Math.sin(phase[i] as number);
  }
  const level = stepOf(re, im);
  const points = Math.min(POINTS / 2, Math.ceil((LAST * span) / width));
  return {
    time: Float64Array.from({ length: points }, (_, i) => i / span),
    level: level.slice(0, points),
  };
}

/**
 * Size of the step response of a low-pass that is known at evenly spaced frequencies.
 *
 * @param re, im its response from 0 upwards, then from the lowest negative one up to 0; overwritten
 * @return from time 0 on, over its final value; one step of time is one over the whole span
 */
export function stepOf(re: Float64Array, im: Float64Array): Float64Array {
  const n = re.length;
  const last = Math.hypot(re[0] as number, im[0] as number) * n;
  fft(re, im, true);
  // What the cut-off of the span puts before time 0 belongs to the sum.
  let sumRe = 0;
  let sumIm = 0;
  const before = n / 16;
  const level = new Float64Array(n - before);
  for (let i = -before; i < n - before; i += 1) {
    const k = (i + n) % n;
    const hr = re[k] as number;
    const hi = im[k] as number;
    if (i >= 0) level[i] = Math.hypot(sumRe + hr / 2, sumIm + hi / 2) / last;
    sumRe += hr;
    sumIm += hi;
  }
  return level;
}
