/** m times the oscillator, plus or minus n times the other: |m·f_lo + s·n·f|. */
export interface Product {
  readonly m: number;
  readonly n: number;
  readonly sign: 1 | -1;
}

/** All products up to an order, each once, pure harmonics among them; the same list each time. */
export function productsUpTo(most: number): readonly Product[] {
  const known = lists.get(most);
  if (known) return known;
  const list = listed(most);
  lists.set(most, list);
  return list;
}

const lists = new Map<number, readonly Product[]>();

function listed(most: number): readonly Product[] {
  const out: Product[] = [];
  for (let order = 1; order <= most; order += 1) {
    for (let m = 0; m <= order; m += 1) {
      const n = order - m;
      out.push({ m, n, sign: 1 });
      if (m > 0 && n > 0) out.push({ m, n, sign: -1 });
    }
  }
  return out;
}

export const frequencyOf = ({ m, n, sign }: Product, oscillator: number, other: number): number =>
  Math.abs(m * oscillator + sign * n * other);

/** How a rig tunes: the oscillator from one end to the other, what is met moving along. */
export interface Tuning {
  /** Oscillator at both ends of the range, Hz. */
  readonly from: number;
  readonly to: number;
  /** The intermediate frequency, Hz. */
  readonly other: number;
  /** What the product would fall on at both ends, Hz. */
  readonly metFrom: number;
  readonly metTo: number;
}

/**
 * Where in the tuning range a product comes nearest to what it would disturb.
 *
 * @returns oscillator there and distance, both Hz; the distance is signed
 */
export function nearestMeeting(
  product: Product,
  { from, to, other, metFrom, metTo }: Tuning,
): { readonly at: number; readonly beside: number } {
  const start = frequencyOf(product, from, other) - metFrom;
  const end = frequencyOf(product, to, other) - metTo;
  // Between the ends the distance runs along a straight line (the bend at zero hertz is far off).
  if (start * end < 0) return { at: from + ((to - from) * start) / (start - end), beside: 0 };
  return Math.abs(start) <= Math.abs(end) ? { at: from, beside: start } : { at: to, beside: end };
}

/** `5 f_lo − 2 f_c` in words that a reader can say. */
export function nameOf({ m, n, sign }: Product): string {
  const part = (k: number, name: string) => (k === 0 ? '' : `${k === 1 ? '' : `${k} × `}${name}`);
  const first = part(m, 'oscillator');
  const second = part(n, 'filter');
  if (first === '' || second === '') return first + second;
  return `${first} ${sign === 1 ? '+' : '−'} ${second}`;
}
