import { fft } from '../fft.ts';
import type { Taps } from './taps.ts';

/** A signal as complex samples: an envelope against its carrier. */
export interface Envelope {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** The transform is so many times as long as the filter: little is worked twice. */
const TIMES = 4;

/**
 * A signal through a filter, block by block; as long as the signal, time 0 where it was.
 *
 * @param re, im the signal; `im` left out for a real one
 * @source overlap-save: T. G. Stockham, AFIPS Spring Joint Computer Conf. 28, 1966
 */
export function convolve(
  re: Float64Array,
  im: Float64Array | null,
  taps: Taps,
  out: Envelope = { re: new Float64Array(re.length), im: new Float64Array(re.length) },
): Envelope {
  const length = taps.re.length;
  const n = TIMES * length;
  const hr = new Float64Array(n);
  const hi = new Float64Array(n);
  hr.set(taps.re);
  hi.set(taps.im);
  fft(hr, hi);
  const xr = new Float64Array(n);
  const xi = new Float64Array(n);
  const fresh = n - length + 1;
  for (let at = 0; at < re.length; at += fresh) {
    // The block starts so that its first whole output is the sample `at`.
    const from = at + taps.before - (length - 1);
    copyPart(re, from, xr);
    if (im === null) xi.fill(0);
    else copyPart(im, from, xi);
    fft(xr, xi);
    for (let k = 0; k < n; k += 1) {
      const a = xr[k] as number;
      const b = xi[k] as number;
      const c = hr[k] as number;
      const d = hi[k] as number;
      xr[k] = a * c - b * d;
      xi[k] = a * d + b * c;
    }
    fft(xr, xi, true);
    const count = Math.min(fresh, re.length - at);
    for (let i = 0; i < count; i += 1) {
      out.re[at + i] = (xr[length - 1 + i] as number) / n;
      out.im[at + i] = (xi[length - 1 + i] as number) / n;
    }
  }
  return out;
}

/** Samples from a place on, nothing where there are none. */
function copyPart(of: Float64Array, from: number, into: Float64Array): void {
  const first = Math.max(0, from);
  const last = Math.min(of.length, from + into.length);
  into.fill(0);
  if (last > first) into.set(of.subarray(first, last), first - from);
}
