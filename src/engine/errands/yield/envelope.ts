/** Steps in which gains are counted, dB, and how many there are, from 0 dB down. */
const STEP = 1 / 16;
const BINS = 2048;

/** Counts of gains at each frequency: shares of the builds are put together by adding them. */
export const blankEnvelope = (points: number): Uint32Array => new Uint32Array(points * BINS);

/** Counts one build's response, dB. */
export function countResponse(envelope: Uint32Array, gain: Float64Array): void {
  for (let i = 0; i < gain.length; i += 1) {
    const down = (-(gain[i] as number) / STEP) | 0;
    const bin = i * BINS + (down < 0 ? 0 : down >= BINS ? BINS - 1 : down);
    envelope[bin] = (envelope[bin] as number) + 1;
  }
}

/**
 * The gain below which a fraction of the builds lies, at each frequency, dB. Within a step of the
 * counting the builds are taken to lie evenly.
 *
 * @param fractions between 0 and 1
 */
export function quantiles(
  envelope: Uint32Array,
  builds: number,
  fractions: readonly number[],
): Float64Array[] {
  const points = envelope.length / BINS;
  return fractions.map((fraction) => {
    const wanted = (1 - fraction) * builds;
    const out = new Float64Array(points);
    for (let i = 0; i < points; i += 1) {
      let seen = 0;
      let bin = 0;
      let here = envelope[i * BINS] as number;
      while (bin + 1 < BINS && seen + here < wanted) {
        seen += here;
        bin += 1;
        here = envelope[i * BINS + bin] as number;
      }
      out[i] = -STEP * (bin + (here > 0 ? (wanted - seen) / here : 0));
    }
    return out;
  });
}
