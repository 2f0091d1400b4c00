/**
 * Complete elliptic integral of the first kind, by the arithmetic-geometric mean.
 *
 * @param m parameter k², 0 ≤ m < 1
 * Source: Abramowitz & Stegun, 17.6.
 */
export function ellipticK(m: number): number {
  return Math.PI / (2 * meanOf(m).mean);
}

/**
 * Complete elliptic integral of the second kind.
 *
 * @param m parameter k², 0 ≤ m ≤ 1
 * Source: Abramowitz & Stegun, 17.6.
 */
export function ellipticE(m: number): number {
  if (m === 1) return 1;
  const { mean, sum } = meanOf(m);
  return (Math.PI / (2 * mean)) * (1 - sum);
}

/**
 * First kind less second kind, K − E, without the loss of digits that subtracting them has where
 * both are nearly π/2.
 *
 * @param m parameter k², 0 ≤ m < 1
 * Source: Abramowitz & Stegun, 17.6.
 */
export function ellipticDifference(m: number): number {
  const { mean, sum } = meanOf(m);
  return (Math.PI / (2 * mean)) * sum;
}

/** Mean of 1 and √(1 − m), and Σ 2^(n−1)·c_n². */
function meanOf(m: number): { mean: number; sum: number } {
  let a = 1;
  let b = Math.sqrt(1 - m);
  let sum = m / 2;
  let weight = 1;
  for (let i = 0; i < 12 && Math.abs(a - b) > 1e-17 * a; i += 1) {
    const c = (a - b) / 2;
    [a, b] = [(a + b) / 2, Math.sqrt(a * b)];
    sum += weight * c * c;
    weight *= 2;
  }
  return { mean: a, sum };
}
