import type { LinkSpectrum } from './linkSpectrum.ts';
import { bandEdges, speechBands } from './speechBands.ts';

/** A link's index for any signal over noise: one sum for each. */
export interface IndexOver {
  /** Speech over noise in each step of frequency where the ratio is nought, dB. */
  readonly over: Float64Array;
  /** What each step is worth, of 1. */
  readonly worth: Float64Array;
}

/**
 * Makes ready what `indexAt` sums.
 *
 * @param link speech and noise of the link with signal and noise equally strong
 */
export function indexOver({ step, speech, noise }: LinkSpectrum): IndexOver {
  const over = speech.map((power, k) => {
    const ratio = 10 * Math.log10(power / (noise[k] as number));
    return Number.isNaN(ratio) ? Number.NEGATIVE_INFINITY : ratio;
  });
  return { over, worth: worthOf(step, speech.length) };
}

/**
 * The index of `spectrumIndex` with so much signal over noise.
 *
 * @param ratio dB
 */
export function indexAt({ over, worth }: IndexOver, ratio: number): number {
  let sum = 0;
  for (let k = 0; k < over.length; k += 1) {
    const own = over[k] as number;
    if (own === Number.NEGATIVE_INFINITY) continue;
    const heard = (own + ratio + 15) / 30;
    if (heard > 0) sum += (worth[k] as number) * Math.min(1, heard);
  }
  return sum;
}

let known: { readonly step: number; readonly worth: Float64Array } | null = null;

/** The importance of each band spread evenly over its steps. */
function worthOf(step: number, length: number): Float64Array {
  if (known?.step === step && known.worth.length === length) return known.worth;
  const worth = new Float64Array(length);
  for (const { middle, importance } of speechBands) {
    const [low, high] = bandEdges(middle);
    for (let k = Math.max(1, Math.floor(low / step)); (k - 0.5) * step < high; k += 1) {
      if (k >= length) break;
      const part = Math.min(high, (k + 0.5) * step) - Math.max(low, (k - 0.5) * step);
      if (part > 0) worth[k] = (worth[k] as number) + (importance * part) / (high - low);
    }
  }
  known = { step, worth };
  return worth;
}
