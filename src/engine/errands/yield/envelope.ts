/*
 * Gains are counted by how far they are off the wanted one: in fine steps close to it, in whole
 * decibels further away. Few counters for each frequency are quickly put together.
 */
const FINE = 1 / 16;
const CLOSE = 8;
const FAR = 60;
const COARSE_BINS = FAR - CLOSE;
const FINE_BINS = (2 * CLOSE) / FINE;
const BINS = 2 * COARSE_BINS + FINE_BINS;

/** Counts of gains at each frequency: shares of the builds are put together by adding them. */
export const blankEnvelope = (points: number): Uint32Array => new Uint32Array(points * BINS);

/**
 * Counts one build's response.
 *
 * @param gain of the build, and `wanted` with nothing off, dB
 */
export function countResponse(
  envelope: Uint32Array,
  gain: Float64Array,
  wanted: Float64Array,
): void {
  for (let i = 0; i < gain.length; i += 1) {
    const bin = i * BINS + binOf((gain[i] as number) - (wanted[i] as number));
    envelope[bin] = (envelope[bin] as number) + 1;
  }
}

function binOf(off: number): number {
  if (off < -CLOSE) return off < -FAR ? 0 : Math.floor(off + FAR);
  if (off < CLOSE) return COARSE_BINS + Math.floor((off + CLOSE) / FINE);
  return off < FAR ? COARSE_BINS + FINE_BINS + Math.floor(off - CLOSE) : BINS - 1;
}

/** Lower edge of a step, dB off the wanted gain. */
function edgeOf(bin: number): number {
  if (bin < COARSE_BINS) return bin - FAR;
  if (bin < COARSE_BINS + FINE_BINS) return (bin - COARSE_BINS) * FINE - CLOSE;
  return bin - COARSE_BINS - FINE_BINS + CLOSE;
}

/**
 * The gain below which a fraction of the builds lies, at each frequency, dB. Within a step of the
 * counting the builds are taken to lie evenly.
 *
 * @param fractions between 0 and 1
 */
export function quantiles(
  envelope: Uint32Array,
  wanted: Float64Array,
  builds: number,
  fractions: readonly number[],
): Float64Array[] {
  return fractions.map((fraction) => {
    const goal = fraction * builds;
    return wanted.map((level, i) => {
      let seen = 0;
      let bin = 0;
      let here = envelope[i * BINS] as number;
      while (bin + 1 < BINS && seen + here < goal) {
        seen += here;
        bin += 1;
        here = envelope[i * BINS + bin] as number;
      }
      const part = here > 0 ? (goal - seen) / here : 0;
      return level + edgeOf(bin) + part * (edgeOf(bin + 1) - edgeOf(bin));
    });
  });
}
