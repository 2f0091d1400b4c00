/** The series of preferred values of IEC 60063, by the number of values a decade. */
const seriesNames = ['E3', 'E6', 'E12', 'E24', 'E48', 'E96', 'E192'] as const;
export type Series = (typeof seriesNames)[number];

// IEC 60063 table 1: E24 and the series drawn from it, which depart from the rounded powers at
// 2.7 3.0 3.3 3.6 3.9 4.3 4.7 8.2.
const e24 = [
  1, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2, 2.2, 2.4, 2.7, 3, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8,
  7.5, 8.2, 9.1,
];

/** The values of one decade, 1 ≤ value < 10. E48 and up are 10^(i/n) to three figures, but 9.20. */
export function decadeOf(series: Series): readonly number[] {
  return decades[series];
}

/** Every value of a series from `low` to `high`, both included, rising; within 1e-18 … 1e12. */
export function preferredBetween(low: number, high: number, series: Series): number[] {
  if (!(high >= low)) return [];
  const all = everyValue(series);
  return all.slice(firstFrom(all, low * (1 - slack)), firstFrom(all, high * (1 + slack)));
}

/**
 * The preferred value that departs least from `value` in per cent.
 * @param value above 0, in any unit
 * @return NaN for what has no preferred value near it: zero, negative, beyond 1e-18 … 1e12
 */
export function nearest(value: number, series: Series): number {
  const [low, high] = [preferredBelow(value, series), preferredAbove(value, series)];
  return value - low <= high - value ? low : high;
}

/** The greatest preferred value not above `value`, NaN where there is none. */
function preferredBelow(value: number, series: Series): number {
  const all = everyValue(series);
  return value > 0 ? (all[firstFrom(all, value * (1 + slack)) - 1] ?? Number.NaN) : Number.NaN;
}

/** The smallest preferred value not below `value`, NaN where there is none. */
function preferredAbove(value: number, series: Series): number {
  const all = everyValue(series);
  return value > 0 ? (all[firstFrom(all, value * (1 - slack))] ?? Number.NaN) : Number.NaN;
}

/** One or two preferred values whose sum comes nearest. */
export interface Pair {
  readonly parts: readonly number[];
  readonly sum: number;
  /** sum / wanted − 1 */
  readonly error: number;
}

/**
 * One part, or two that add (capacitors in parallel, resistors or coils in series), nearest to
 * `value`. One part alone wins where a second would not bring it closer.
 *
 * @param value above 0
 * @param smallest the smallest part worth fitting, in the same unit: 0 for any down to 1/1000
 */
export function bestPair(value: number, series: Series, smallest = 0): Pair {
  const single = nearest(value, series);
  let best: Pair = { parts: [single], sum: single, error: single / value - 1 };
  // Two equal parts may both lie just below half.
  for (const large of preferredBetween(preferredBelow(value / 2, series), value, series)) {
    const rest = value - large;
    if (rest < Math.max(smallest * 0.5, value / 2000)) continue;
    for (const small of [preferredBelow(rest, series), preferredAbove(rest, series)]) {
      const error = (large + small) / value - 1;
      if (small < smallest || Math.abs(error) >= Math.abs(best.error) - 1e-12) continue;
      best = { parts: [large, small], sum: large + small, error };
    }
  }
  return best;
}

// A value reckoned from preferred ones still counts as preferred.
const slack = 1e-12;

/** Place of the first value that is not below `low`. */
function firstFrom(all: readonly number[], low: number): number {
  let [from, to] = [0, all.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((all[middle] ?? 0) < low) from = middle + 1;
    else to = middle;
  }
  return from;
}

const kept = new Map<Series, readonly number[]>();

function everyValue(series: Series): readonly number[] {
  const had = kept.get(series);
  if (had) return had;
  const made = Array.from({ length: 30 }, (_, decade) => decade - 18).flatMap((power) =>
    decades[series].map((value) => Number(`${value}e${power}`)),
  );
  kept.set(series, made);
  return made;
}

const every = (step: number): number[] => e24.filter((_, index) => index % step === 0);

const fine = (count: number): number[] =>
  Array.from({ length: count }, (_, index) => {
    const value = Number((10 ** (index / count)).toFixed(2));
    // The one departure of the fine series: 9.20 where the formula gives 9.19.
    return value === 9.19 ? 9.2 : value;
  });

const decades: Readonly<Record<Series, readonly number[]>> = {
  E3: every(8),
  E6: every(4),
  E12: every(2),
  E24: e24,
  E48: fine(48),
  E96: fine(96),
  E192: fine(192),
};
