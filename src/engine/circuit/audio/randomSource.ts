/** Numbers that look drawn by chance, the same for the same seed. */
export interface RandomSource {
  /** Evenly from 0 to below 1. */
  readonly even: () => number;
  /** From the normal distribution of mean 0 and variance 1. */
  readonly normal: () => number;
}

const PER_WORD = 2 ** -32;

/**
 * A generator with a memory of its own.
 *
 * @param seed whole number
 * @source xoshiro128**: D. Blackman & S. Vigna, ACM Trans. Math. Software 47, 2021; started by
 *   splitmix32. Normal: G. Marsaglia & T. A. Bray, SIAM Review 6, 1964 (polar method).
 */
export function randomSource(seed: number): RandomSource {
  let mixed = seed | 0;
  const split = () => {
    mixed = (mixed + 0x9e3779b9) | 0;
    let z = mixed;
    z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    return z ^ (z >>> 16);
  };
  let [a, b, c, d] = [split(), split(), split(), split()];
  const even = () => {
    let word = Math.imul(b, 5);
    word = Math.imul((word << 7) | (word >>> 25), 9);
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = (d << 11) | (d >>> 21);
    return (word >>> 0) * PER_WORD;
  };
  let spare: number | null = null;
  const normal = () => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    for (;;) {
      const x = 2 * even() - 1;
      const y = 2 * even() - 1;
      const s = x * x + y * y;
      if (s >= 1 || s === 0) continue;
      const scale = Math.sqrt((-2 * Math.log(s)) / s);
      spare = y * scale;
      return x * scale;
    }
  };
  return { even, normal };
}
