import { bandEdges, speechBands } from './speechBands.ts';

/**
 * Spectrum level in each band: the mean power in a hertz over the band, dB against 1 in a hertz.
 *
 * @param power in a hertz at k·step
 * @param step Hz
 * @return dB for each of `speechBands`; −Infinity where there is nothing, or no frequency
 */
export function bandLevels(power: Float64Array, step: number): Float64Array {
  return Float64Array.from(speechBands, ({ middle }) => {
    const [low, high] = bandEdges(middle);
    let sum = 0;
    let width = 0;
    // A point stands for half a step to either side; at the edges only for its part.
    for (let k = Math.max(1, Math.floor(low / step)); k < power.length; k += 1) {
      const part = Math.min(high, (k + 0.5) * step) - Math.max(low, (k - 0.5) * step);
      if (part > 0) {
        sum += part * (power[k] as number);
        width += part;
      }
      if ((k - 0.5) * step > high) break;
    }
    return width > 0 ? 10 * Math.log10(sum / width) : -Infinity;
  });
}
