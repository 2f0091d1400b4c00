import { fft } from '../fft.ts';
import type { Envelope } from './convolve.ts';
import type { RandomSource } from './randomSource.ts';

/** Two rays by way of the ionosphere. */
export interface Fading {
  /** Frequency spread of each ray, Hz: twice the standard deviation of its Doppler spectrum. */
  readonly spread: number;
  /** By how much the second ray comes later, s. */
  readonly delay: number;
}

/** Conditions by name. Source: ITU-R F.1487, middle latitudes. */
export const conditions = {
  quiet: { spread: 0.1, delay: 0.5e-3 },
  moderate: { spread: 0.5, delay: 1e-3 },
  disturbed: { spread: 1, delay: 2e-3 },
} as const satisfies Record<string, Fading>;

/** Steps of a ray's gain in the time of one spread: enough for straight lines between. */
const STEPS = 32;

/**
 * Gain of one ray over time: complex normal, mean power 1, Gaussian Doppler spectrum.
 *
 * @param spread Hz, @param count samples, @param rate of them, a second
 * @source C. C. Watterson, J. R. Juroshek & W. D. Bensema, IEEE Trans. Comm. Tech. 18, 1970
 */
export function rayGain(
  spread: number,
  count: number,
  rate: number,
  { normal }: RandomSource,
): Envelope {
  const slow = Math.min(rate, STEPS * spread);
  // One whole turn of the transform is twice as long as needed, so that its end does not meet its start.
  const wanted = Math.max(64, (2 * count * slow) / rate + 4);
  const n = 2 ** Math.ceil(Math.log2(wanted));
  const re = new Float64Array(n);
  const im = new Float64Array(n);
  const sigma = spread / 2;
  let power = 0;
  for (let k = 0; k < n; k += 1) {
    const f = (slow * (k < n / 2 ? k : k - n)) / n;
    const density = Math.exp(-(f * f) / (2 * sigma * sigma));
    const size = Math.sqrt(density / 2);
    power += density;
    re[k] = size * normal();
    im[k] = size * normal();
  }
  fft(re, im, true);
  const scale = 1 / Math.sqrt(power);
  const out = { re: new Float64Array(count), im: new Float64Array(count) };
  const step = slow / rate;
  for (let i = 0; i < count; i += 1) {
    const at = i * step;
    const k = at | 0;
    const t = at - k;
    const [r0, r1] = [re[k] as number, re[k + 1] as number];
    const [i0, i1] = [im[k] as number, im[k + 1] as number];
    out.re[i] = (r0 + (r1 - r0) * t) * scale;
    out.im[i] = (i0 + (i1 - i0) * t) * scale;
  }
  return out;
}

/**
 * An envelope after two rays of equal mean power, in place; mean power is kept.
 *
 * @param rate samples a second
 */
export function fade(
  re: Float64Array,
  im: Float64Array,
  { spread, delay }: Fading,
  rate: number,
  random: RandomSource,
): void {
  const n = re.length;
  const first = rayGain(spread, n, rate, random);
  const second = rayGain(spread, n, rate, random);
  const late = Math.round(delay * rate);
  const half = Math.SQRT1_2;
  // From the end, so that what is read has not been written yet.
  for (let i = n - 1; i >= 0; i -= 1) {
    const j = i - late;
    const a = re[i] as number;
    const b = im[i] as number;
    const c = j < 0 ? 0 : (re[j] as number);
    const d = j < 0 ? 0 : (im[j] as number);
    const gr = first.re[i] as number;
    const gi = first.im[i] as number;
    const hr = second.re[i] as number;
    const hi = second.im[i] as number;
    re[i] = half * (a * gr - b * gi + c * hr - d * hi);
    im[i] = half * (a * gi + b * gr + c * hi + d * hr);
  }
}
