import { format } from '../../quantity/format.ts';
import { parse } from '../../quantity/parse.ts';

/** Capacitors of one value that the user has. */
export interface Owned {
  /** F */
  readonly value: number;
  readonly count: number;
}

/** What a list of owned capacitors says. */
export interface OwnedParts {
  /** By value, rising; each value once. */
  readonly parts: readonly Owned[];
  /** What was not understood, a sentence for each. */
  readonly wrong: readonly string[];
}

/** Capacitors that can have a place in a ladder filter, F. */
const SMALLEST = 1e-13;
const LARGEST = 1e-6;
const MOST = 999;
/** More values than this are not looked at. */
export const VALUES = 80;

/**
 * Reads a list of capacitors with their counts: `100p 5, 82p x3, 2 x 4.7n, 47`.
 * Items are parted by commas, semicolons or lines; a plain number is in picofarads.
 */
export function ownedParts(text: string): OwnedParts {
  const counts = new Map<number, number>();
  const wrong: string[] = [];
  for (const item of itemsOf(text)) {
    const read = readItem(item);
    if (typeof read === 'string') {
      wrong.push(read);
    } else {
      counts.set(read.value, Math.min(MOST, (counts.get(read.value) ?? 0) + read.count));
    }
  }
  const parts = [...counts].map(([value, count]) => ({ value, count }));
  parts.sort((a, b) => a.value - b.value);
  if (parts.length > VALUES) {
    wrong.push(`${parts.length} values are too many: the first ${VALUES} count.`);
  }
  return { parts: parts.slice(0, VALUES), wrong };
}

/** A comma parts two items, but not where it stands in a number: 4,7n. */
function itemsOf(text: string): string[] {
  return text
    .replace(/(^|[\s;,])(\d{1,3}),(\d{1,2} ?[pnuµμ])/gim, '$1$2.$3')
    .split(/[,;\n\r]/)
    .map((item) => item.replace(/#.*$/, '').trim())
    .filter((item) => item !== '');
}

function readItem(item: string): Owned | string {
  const after = /^(.+?) ?[x×*] ?(\d+)$/i.exec(item) ?? /^(.*\S)\s+(\d+)(?: ?pcs?\.?)?$/i.exec(item);
  const before = after ? null : /^(\d+) ?[x×*] ?(.+)$/i.exec(item);
  const value = before?.[2] ?? after?.[1] ?? item;
  const count = Number(before?.[1] ?? after?.[2] ?? 1);
  const plain = /^[\d.]+$/.test(value.trim()) ? `${value.trim()} p` : value;
  const read = parse(plain, 'F');
  if (read.kind !== 'value') {
    return `“${short(item)}” is not understood: write a value and how many, as 82p 3.`;
  }
  if (!(read.value >= SMALLEST && read.value <= LARGEST)) {
    return `${short(item)}: ${format(SMALLEST, 'F', 2)} to ${format(LARGEST, 'F', 2)} can have a place here.`;
  }
  if (count < 1 || count > MOST) return `${short(item)}: 1 to ${MOST} of a value can be counted.`;
  return { value: read.value, count };
}

const short = (item: string) => (item.length > 24 ? `${item.slice(0, 24)}…` : item);
