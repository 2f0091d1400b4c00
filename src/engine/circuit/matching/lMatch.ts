/** An L network between two resistances: one arm across the higher, one in series with the lower. */
export interface LMatch {
  /** √(high/low − 1): reactance over resistance in the series arm. */
  readonly q: number;
  /** Reactance of the series arm, Ω, without sign. */
  readonly seriesX: number;
  /** Reactance of the arm across the higher resistance, Ω, without sign. */
  readonly shuntX: number;
  /** Low-pass form: coil in series, capacitor across. H, F. */
  readonly lowpass: { readonly l: number; readonly c: number };
  /** High-pass form: capacitor in series, coil across. H, F. */
  readonly highpass: { readonly l: number; readonly c: number };
}

/**
 * The L network that makes one resistance look like another at one frequency. Lossless.
 *
 * @param a one resistance, Ω
 * @param b the other, Ω
 * @param frequency Hz
 * @return null where the two are alike: there is nothing to match
 * Source: closed form; any text on impedance matching.
 */
export function lMatch(a: number, b: number, frequency: number): LMatch | null {
  if (a === b) return null;
  const high = Math.max(a, b);
  const low = Math.min(a, b);
  const w = 2 * Math.PI * frequency;
  const q = Math.sqrt((high - low) / low);
  const seriesX = q * low;
  const shuntX = high / q;
  return {
    q,
    seriesX,
    shuntX,
    lowpass: { l: seriesX / w, c: 1 / (w * shuntX) },
    highpass: { l: shuntX / w, c: 1 / (w * seriesX) },
  };
}
