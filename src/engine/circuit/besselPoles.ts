import { type Pole, polesOf, toHalfPower } from './poles.ts';
import { polynomialRoots } from './polynomialRoots.ts';

/**
 * Poles of the Bessel low-pass: maximally flat delay, scaled to half power at 1 rad/s.
 *
 * They are the roots of the reverse Bessel polynomial Σ (2n − k)!/(2^(n−k)·k!·(n − k)!)·s^k, whose
 * coefficients are whole numbers below 2^53 up to n = 14.
 *
 * @param n number of poles, 1 to 14
 * @source W. E. Thomson, Delay networks having maximally flat frequency characteristics,
 * Proc. IEE 96 part III, 1949
 */
export function besselPoles(n: number): Pole[] {
  // From the highest down: c[k−1] = c[k]·(2n − k + 1)·k / (2(n − k + 1)).
  const c = Array<number>(n + 1).fill(1);
  for (let k = n; k > 0; k -= 1) {
    c[k - 1] = ((c[k] ?? 0) * (2 * n - k + 1) * k) / (2 * (n - k + 1));
  }
  return toHalfPower(polesOf(polynomialRoots(c)));
}
