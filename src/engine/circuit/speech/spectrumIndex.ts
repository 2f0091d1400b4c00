import { bandEdges, speechBands } from './speechBands.ts';

/**
 * Speech intelligibility index from whole spectra: the procedure's sum over bands as an integral. The
 * standard takes a band by its mean level; here each frequency counts by its own ratio, so that half
 * a band is worth half. Where ratios are even over each band both are one.
 *
 * @param step Hz
 * @param speech, noise power in a hertz at k·step
 * @param audible receives the audible part of each band, 0 to 1
 * @source after ANSI S3.5-1997: A = (SNR + 15)/30 from 0 to 1, importance spread evenly over a band
 */
export function spectrumIndex(
  step: number,
  speech: Float64Array,
  noise: Float64Array,
  audible: Float64Array = new Float64Array(speechBands.length),
): number {
  let sum = 0;
  speechBands.forEach(({ middle, importance }, i) => {
    const [low, high] = bandEdges(middle);
    let heard = 0;
    for (let k = Math.max(1, Math.floor(low / step)); (k - 0.5) * step < high; k += 1) {
      if (k >= speech.length) break;
      const part = Math.min(high, (k + 0.5) * step) - Math.max(low, (k - 0.5) * step);
      if (part <= 0) continue;
      const ratio = 10 * Math.log10((speech[k] as number) / (noise[k] as number));
      // Neither speech nor noise: nothing is heard.
      if (!Number.isNaN(ratio)) heard += part * Math.min(1, Math.max(0, (ratio + 15) / 30));
    }
    audible[i] = heard / (high - low);
    sum += importance * (audible[i] as number);
  });
  return sum;
}
