import { format } from '../quantity/format.ts';
import { preferredBetween } from '../quantity/preferred.ts';

/** Foil trimmers as they are sold, F: least and most. Common practice, from memory. */
const trimmers = [
  [1.5e-12, 5e-12],
  [2e-12, 10e-12],
  [4e-12, 20e-12],
  [5.5e-12, 30e-12],
  [7e-12, 60e-12],
] as const;

export interface Trimming {
  /** Fixed capacitor beside the trimmer, E24, F; 0 for none. */
  readonly fixed: number;
  readonly low: number;
  readonly high: number;
}

/** A trimmer that covers a capacitance a quarter either way. */
export const trimming = (c: number): Trimming | null => covering(0.8 * c, 1.25 * c);

/**
 * A trimmer, with a fixed capacitor beside it if need be, that covers a range: the smallest trimmer
 * that does, the range near its middle. Null where none does.
 *
 * @param least, most capacitance to be set, F
 */
export function covering(least: number, most: number): Trimming | null {
  for (const [low, high] of trimmers) {
    const covers = (fixed: number) => fixed + low <= least && fixed + high >= most;
    if (covers(0)) return { fixed: 0, low, high };
    const middle = (least + most) / 2 - (low + high) / 2;
    const fixed = preferredBetween(1e-12, most, 'E24')
      .filter(covers)
      .sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle))[0];
    if (fixed !== undefined) return { fixed, low, high };
  }
  return null;
}

/** The two in words. */
export const trimmingWords = ({ fixed, low, high }: Trimming): string =>
  `${fixed === 0 ? '' : `${format(fixed, 'F', 2)} fixed, and beside it `}a trimmer of ${format(low, 'F', 2)} to ${format(high, 'F', 2)}`;
