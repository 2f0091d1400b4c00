import type { RandomSource } from './randomSource.ts';

/** Mean power of complex samples. */
export function meanPower(re: Float64Array, im: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < re.length; i += 1) {
    const a = re[i] as number;
    const b = im[i] as number;
    sum += a * a + b * b;
  }
  return sum / Math.max(1, re.length);
}

/**
 * Adds white noise on both sides of the carrier, in place.
 *
 * @param density power in a hertz, in the unit of the samples squared
 * @param rate samples a second
 */
export function addNoise(
  re: Float64Array,
  im: Float64Array,
  density: number,
  rate: number,
  { normal }: RandomSource,
): void {
  const sigma = Math.sqrt((density * rate) / 2);
  for (let i = 0; i < re.length; i += 1) {
    re[i] = (re[i] as number) + sigma * normal();
    im[i] = (im[i] as number) + sigma * normal();
  }
}

/**
 * Density of noise for a signal to noise ratio.
 *
 * @param power of the signal, @param ratio signal to noise in dB, @param bandwidth that it is meant for, Hz
 */
export const densityFor = (power: number, ratio: number, bandwidth: number): number =>
  power / (10 ** (ratio / 10) * bandwidth);
