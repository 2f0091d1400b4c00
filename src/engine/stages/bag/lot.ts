import { type Read, type ReadBag, readBag } from './readBag.ts';
import { medianOf } from './statistics.ts';

/** A crystal that counts. */
export type Counted = Read & { readonly fs: number };

/** The bag as read: each line, and the lot of those that count. */
export interface Lot extends ReadBag {
  /** The crystals that count, by rising frequency. */
  readonly counted: readonly Counted[];
  /** Median of the frequencies that count, Hz; null where there are none. */
  readonly median: number | null;
}

/** Farther from the median than this part of it, a crystal is of another kind. */
export const OTHER_KIND = 0.005;

/** Reads the list, and sets aside what has no frequency or one far from all others. */
export function lotOf(text: string): Lot {
  const read = readBag(text);
  const all = read.rows.filter((row): row is Counted => row.fs !== null);
  const first = all.length === 0 ? null : medianOf(all.map(({ fs }) => fs).sort(rising));
  const counted = all
    .filter(({ fs }) => first !== null && Math.abs(fs / first - 1) <= OTHER_KIND)
    .sort((a, b) => a.fs - b.fs);
  const median = counted.length === 0 ? null : medianOf(counted.map(({ fs }) => fs));
  return { ...read, counted, median };
}

const rising = (a: number, b: number) => a - b;
