import type { Stock } from '../../circuit/jointParts.ts';
import type { Fitted } from './chooseCapacitor.ts';
import type { Owned } from './ownedParts.ts';

/** What can be made of owned capacitors, one alone or two side by side. */
export interface StockMenu {
  /** F, rising. */
  readonly values: Float64Array;
  readonly fitted: readonly Fitted[];
  readonly stock: Stock;
}

/** How far beyond the least and the greatest value wanted is worth keeping, as a factor. */
const SPAN = 2.5;

/**
 * All singles and pairs of owned capacitors near what is wanted.
 *
 * @param wanted the exact values, F
 */
export function stockMenu(parts: readonly Owned[], wanted: readonly number[]): StockMenu {
  const low = Math.min(...wanted) / SPAN;
  const high = Math.max(...wanted) * SPAN;
  const entries: { value: number; first: number; second: number }[] = [];
  parts.forEach(({ value: a, count }, first) => {
    entries.push({ value: a, first, second: -1 });
    parts.slice(first).forEach(({ value: b }, i) => {
      const value = a + b;
      if ((i > 0 || count > 1) && value > low && value < high) {
        entries.push({ value, first, second: first + i });
      }
    });
  });
  entries.sort((a, b) => a.value - b.value || a.second - b.second);
  const value = (kind: number) => parts[kind]?.value ?? 0;
  return {
    values: Float64Array.from(entries, (entry) => entry.value),
    fitted: entries.map(({ value: sum, first, second }) => ({
      value: sum,
      parts: second < 0 ? [value(first)] : [value(second), value(first)],
    })),
    stock: {
      count: Int32Array.from(parts, ({ count }) => count),
      first: Int32Array.from(entries, ({ first }) => first),
      second: Int32Array.from(entries, ({ second }) => second),
    },
  };
}

/** Entries looked at on either side of a wanted value. */
const AROUND = 40;

/**
 * Shares owned capacitors out one by one, the closest by ratio first, but so that every place gets
 * one as long as there are enough.
 *
 * @return for each place its entry in the menu; −1 where nothing was left
 */
export function shareOut({ values, stock }: StockMenu, wanted: readonly number[]): Int32Array {
  const chosen = new Int32Array(wanted.length).fill(-1);
  const left = stock.count.slice();
  let parts = left.reduce((sum, count) => sum + count, 0);
  let places = wanted.length;
  const all = wanted.flatMap((exact, place) =>
    near(values, exact).map((entry) => ({
      place,
      entry,
      off: Math.abs(Math.log((values[entry] ?? 0) / exact)),
    })),
  );
  all.sort((a, b) => a.off - b.off || a.place - b.place || a.entry - b.entry);
  const give = (place: number, entry: number): void => {
    const kinds = [stock.first[entry] ?? 0, stock.second[entry] ?? -1].filter((kind) => kind >= 0);
    if (chosen[place] !== -1) return;
    // Two at one place only where the other places still get one each.
    if (kinds.length > 1 && parts - kinds.length < places - 1) return;
    const taken = left.slice();
    for (const kind of kinds) taken[kind] = (taken[kind] ?? 0) - 1;
    if (kinds.some((kind) => (taken[kind] ?? 0) < 0)) return;
    left.set(taken);
    chosen[place] = entry;
    parts -= kinds.length;
    places -= 1;
  };
  for (const { place, entry } of all) give(place, entry);
  // What is still bare takes what is left, however far off.
  const singles = [...values.keys()].filter((entry) => (stock.second[entry] ?? 0) < 0);
  wanted.forEach((exact, place) => {
    const off = (entry: number) => Math.abs(Math.log((values[entry] ?? 0) / exact));
    for (const entry of singles.toSorted((a, b) => off(a) - off(b))) give(place, entry);
  });
  return chosen;
}

/** The entries around a value. */
function near(values: Float64Array, exact: number): number[] {
  let at = values.findIndex((value) => value >= exact);
  if (at < 0) at = values.length;
  const from = Math.max(0, at - AROUND);
  const to = Math.min(values.length, at + AROUND);
  return Array.from({ length: to - from }, (_, i) => from + i);
}
