import { bracketedRoot } from './bracketedRoot.ts';
import { type Crystal, frequencyAtReactance, seriesResonance } from './crystal.ts';

/**
 * The lossless passband of a crystal ladder, with the crystal's own reactance as the frequency
 * variable: it runs from X = h(a − 1) to X = h(a + 1), where h is half the span of reactance and a
 * the largest sum of the two couplings of a mesh. Exact for any holder capacitance, as long as a
 * capacitor's reactance hardly changes over the passband.
 */
export interface Span {
  /** Half the reactance between the passband's edges, Ω. */
  readonly h: number;
  /** Edges of the passband, Hz. */
  readonly low: number;
  readonly high: number;
}

/** The passband that belongs to h (Ω). */
export function spanAt(crystal: Crystal, largestSum: number, h: number): Span {
  return {
    h,
    low: frequencyAtReactance(crystal, h * (largestSum - 1)),
    high: frequencyAtReactance(crystal, h * (largestSum + 1)),
  };
}

/**
 * Frequencies at which to look for the humps and edges of a ladder of n crystals, Hz, rising:
 * dense towards the edges as the humps are, then evenly outside to `margin` times the width.
 *
 * They are spaced by reactance: near fp the upper humps crowd together in frequency.
 */
export function spanFrequencies(
  crystal: Crystal,
  largestSum: number,
  h: number,
  n: number,
  margin = 0.1,
): number[] {
  const inner = 4 * n + 8;
  const at: number[] = [];
  for (let i = 0; i <= inner; i += 1) {
    const omega = -1.04 * Math.cos((Math.PI * i) / inner);
    at.push(frequencyAtReactance(crystal, h * (largestSum + omega)));
  }
  const [low, high] = [at[0] ?? 0, at[inner] ?? 0];
  const outer = Math.ceil(margin * 20);
  for (let i = 1; i <= outer; i += 1) {
    const out = ((high - low) * margin * i) / outer;
    at.unshift(low - out);
    at.push(high + out);
  }
  return at;
}

/**
 * The h (Ω) at which the lossless passband is widest; null where it widens without end.
 *
 * With r = C0/Cm and x = X·ωs·Cm the frequency goes as x/(1 + r·x) to first order; the difference
 * between two x = y(a ± 1) is greatest at r·y = (s − 1)/((a + 1) − s(a − 1)), s² = (a + 1)/(a − 1).
 * Two crystals, and chains whose largest sum is below 1, have their low edge below fs and no limit.
 */
export function widestHalfSpan(crystal: Crystal, largestSum: number): number | null {
  if (largestSum <= 1) return null;
  const s = Math.sqrt((largestSum + 1) / (largestSum - 1));
  const y = (s - 1) / (largestSum + 1 - s * (largestSum - 1));
  return y / (2 * Math.PI * seriesResonance(crystal) * crystal.c0);
}

/**
 * The smallest h (Ω) whose lossless passband is as wide as asked for; null if none is.
 *
 * @param width Hz
 */
export function halfSpanFor(crystal: Crystal, largestSum: number, width: number): number | null {
  // Without the holder, X rises by 4πLm for each hertz.
  const plain = 2 * Math.PI * crystal.lm * width;
  const most = widestHalfSpan(crystal, largestSum) ?? plain * 1000;
  const short = (h: number) => {
    const { low, high } = spanAt(crystal, largestSum, h);
    return high - low - width;
  };
  if (short(most) < 0) return null;
  const least = Math.min(plain * 0.9, most);
  if (short(least) > 0) return bracketedRoot(short, least / 1000, least, plain * 1e-14);
  return bracketedRoot(short, least, most, plain * 1e-14);
}
