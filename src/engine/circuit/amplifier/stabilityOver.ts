import { rollett } from '../nodal/rollett.ts';
import { scattering, type TwoPort } from '../nodal/scattering.ts';

/**
 * Rollett's factor over a band, evenly spaced on a scale of octaves. Allocates nothing.
 *
 * @param from, to ends of the band, Hz
 * @param frequency, k receive the frequencies and the factors; NaN where there is no answer
 */
export function stabilityOver(
  two: TwoPort,
  from: number,
  to: number,
  frequency: Float64Array,
  k: Float64Array,
): void {
  const step = Math.log(to / from) / (frequency.length - 1);
  for (let i = 0; i < frequency.length; i += 1) {
    const f = from * Math.exp(i * step);
    frequency[i] = f;
    k[i] = scattering(two, f) ? rollett(two.s).k : Number.NaN;
  }
}
