import { speechBands } from './speechBands.ts';

/** Speech covers itself so much further down than noise, dB. */
const SELF = 24;
/** Bandwidth of a one-third octave over its middle, dB: 10·lg(2^⅙ − 2^−⅙). */
const WIDTH = 10 * Math.log10(2 ** (1 / 6) - 2 ** (-1 / 6));
/** From a band's upper edge the covering falls: its middle over that edge. */
const EDGE = 2 ** (-1 / 6);

/**
 * What noise amounts to when each band also covers the ones above it.
 *
 * @param speech, noise spectrum level in each band of `speechBands`, dB
 * @return spectrum level that counts as noise, dB
 * @source ANSI S3.5-1997, 5.4, one-third octave; from memory:
 *   C = −80 + 0.6·(B + 10·lg f − 6.353) dB an octave from the upper edge of a band
 */
export function spreadOfMasking(speech: Float64Array, noise: Float64Array): Float64Array {
  const own = speechBands.map((_, i) => Math.max(noise[i] as number, (speech[i] as number) - SELF));
  return Float64Array.from(speechBands, ({ middle }, i) => {
    // The lowest band is covered by nothing below it.
    if (i === 0) return own[0] as number;
    let power = 10 ** ((noise[i] as number) / 10);
    for (let k = 0; k < i; k += 1) {
      const level = own[k] as number;
      if (level === -Infinity) continue;
      const from = (speechBands[k] as { middle: number }).middle;
      const slope = -80 + 0.6 * (level + 10 * Math.log10(from) + WIDTH);
      power += 10 ** ((level + slope * Math.log2((EDGE * middle) / from)) / 10);
    }
    return 10 * Math.log10(power);
  });
}
