import { preferredBetween } from '../../quantity/preferred.ts';
import {
  chooseCapacitor,
  type Fitted,
  type SeriesFitting,
  SMALLEST,
  seriesOf,
} from './chooseCapacitor.ts';

/** Values that may stand in for one capacitor. */
export interface PartMenu {
  /** F, rising. */
  readonly values: Float64Array;
  /** What each is made of. */
  readonly fitted: readonly Fitted[];
  /** The entry nearest to the exact value. */
  readonly nearest: number;
}

/** How far to either side of the exact value pairs are looked at: several steps of their sums. */
const PAIRS = { E6: 0.12, E12: 0.06, E24: 0.03 } as const;

/**
 * What a series of preferred values has near a capacitance.
 *
 * @param exact F, above zero
 */
export function partMenu(exact: number, fitting: SeriesFitting): PartMenu {
  const nearest = chooseCapacitor(exact, fitting);
  const [series, way] = seriesOf(fitting);
  const found: Fitted[] =
    way === 'single'
      ? preferredBetween(exact / 2.5, exact * 2.5, series).map(alone)
      : sums(exact, PAIRS[series], series);
  found.push(nearest);
  found.sort((a, b) => a.value - b.value || a.parts.length - b.parts.length);
  const fitted = found.filter(({ value }, i) => {
    const before = found[i - 1];
    return before === undefined || value - before.value > 1e-9 * value;
  });
  const at = fitted.findIndex(({ value }) => Math.abs(value / nearest.value - 1) < 2e-9);
  return { values: Float64Array.from(fitted, ({ value }) => value), fitted, nearest: at };
}

const alone = (value: number): Fitted => ({ value, parts: [value] });

/** One or two parts whose sum lies within `span` of a value, as a fraction of it. */
function sums(exact: number, span: number, series: keyof typeof PAIRS): Fitted[] {
  const [low, high] = [exact * (1 - span), exact * (1 + span)];
  return preferredBetween(low / 2, high, series).flatMap((large) => {
    const least = Math.max(low - large, SMALLEST);
    const most = Math.min(high - large, large);
    const pairs = preferredBetween(least, most, series).map((small) => ({
      value: large + small,
      parts: [large, small],
    }));
    return large >= low ? [alone(large), ...pairs] : pairs;
  });
}
