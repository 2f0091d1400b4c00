/**
 * Fixed-point numbers of 300 binary places in BigInt, for the few sums that a double cannot hold.
 * A value v stands for v/2^300.
 */
const PLACES = 300n;

export const ONE = 1n << PLACES;

/** A number below 2^60, exactly down to 2^−60. */
export const long = (x: number): bigint => BigInt(Math.round(x * 2 ** 60)) << (PLACES - 60n);

export const short = (v: bigint): number => Number(v) / 2 ** Number(PLACES);

export const times = (a: bigint, b: bigint): bigint => (a * b) >> PLACES;

export const over = (a: bigint, b: bigint): bigint => (a << PLACES) / b;

/** Square root of a value above zero, by Newton's steps from that of the double. */
export function root(v: bigint): bigint {
  let r = long(Math.sqrt(short(v)));
  for (let i = 0; i < 5; i += 1) r = (r + over(v, r)) >> 1n;
  return r;
}

/** Coefficients of the product of two polynomials, from the constant upwards. */
export function product(a: readonly bigint[], b: readonly bigint[]): bigint[] {
  const all = Array<bigint>(a.length + b.length - 1).fill(0n);
  a.forEach((x, i) => {
    b.forEach((y, j) => {
      all[i + j] = (all[i + j] ?? 0n) + times(x, y);
    });
  });
  return all;
}
