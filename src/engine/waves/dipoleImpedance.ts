import { sineIntegral } from './sineIntegral.ts';

/** Wave impedance of free space over 4π, Ω. */
const OVER_4_PI = 376.730313668 / (4 * Math.PI);

/**
 * Resistance and reactance of a thin half-wave dipole in free space, Ω: closed form. Books have
 * 73.13 + j42.54, with 120π Ω for free space.
 */
export const DIPOLE = { r: 73.0791, x: 42.5151 } as const;

/**
 * Mutual impedance of two thin half-wave dipoles side by side, Ω.
 *
 * @param apart their distance in wavelengths, above 0
 * @returns resistance and reactance
 * Source: Carter, Proc. IRE 20, 1932; Balanis, Antenna Theory, 8.7 (side by side).
 */
export function mutualImpedance(apart: number): { readonly r: number; readonly x: number } {
  const k = 2 * Math.PI;
  const length = 0.5;
  const slant = Math.hypot(apart, length);
  const a = new Float64Array(2);
  const b = new Float64Array(2);
  const c = new Float64Array(2);
  sineIntegral(k * apart, a);
  sineIntegral(k * (slant + length), b);
  // The difference as a quotient keeps its digits where the wires are close.
  sineIntegral((k * apart * apart) / (slant + length), c);
  return {
    r: OVER_4_PI * (2 * (a[1] ?? 0) - (b[1] ?? 0) - (c[1] ?? 0)),
    x: -OVER_4_PI * (2 * (a[0] ?? 0) - (b[0] ?? 0) - (c[0] ?? 0)),
  };
}
