import { ellipticDifference, ellipticE } from './elliptic.ts';
import { MU0 } from './wireLoss.ts';

/**
 * Inductance of a single-layer air coil by Wheeler's formula, H: r²N²/(9r + 10ℓ) in inches and µH,
 * within 1 % for ℓ > 0.8 r.
 *
 * @param turns number of turns, need not be whole
 * @param diameter of the winding from wire centre to wire centre, m
 * @param length of the winding, m
 * Source: Wheeler, Simple Inductance Formulas for Radio Coils, Proc. IRE 16, 1928.
 */
export function wheelerCoil(turns: number, diameter: number, length: number): number {
  const inch = 0.0254;
  const r = diameter / 2 / inch;
  return (1e-6 * (r * turns) ** 2) / (9 * r + (10 * length) / inch);
}

/**
 * Inductance of a cylindrical current sheet, H: exact, what Nagaoka's table holds.
 *
 * L = μ₀N²/(3ℓ²)·{√(ℓ² + D²)·[ℓ²K + (D² − ℓ²)E] − D³}, modulus k² = D²/(D² + ℓ²).
 *
 * @param turns number of turns
 * @param diameter m
 * @param length m
 * Source: Lorenz, 1879; Nagaoka, 1909; see Rosa & Grover, NBS Bulletin 8, 1912, formula 72.
 */
export function airCoil(turns: number, diameter: number, length: number): number {
  const d = diameter;
  const l = length;
  const m = (d * d) / (d * d + l * l);
  // D²E + ℓ²(K − E) is the bracket put so that a long coil loses no digits.
  const sum =
    Math.sqrt(l * l + d * d) * (d * d * ellipticE(m) + l * l * ellipticDifference(m)) - d ** 3;
  return (MU0 * turns * turns * sum) / (3 * l * l);
}

/**
 * Turns for an inductance at a given pitch: root of `airCoil(N, D, N·pitch) = L` by halving;
 * inductance rises steadily with the turns.
 *
 * @param l wanted inductance, H
 * @param diameter m
 * @param pitch from turn to turn, m
 */
export function airCoilTurns(l: number, diameter: number, pitch: number): number {
  let low = 0.01;
  let high = 1;
  while (airCoil(high, diameter, high * pitch) < l) {
    low = high;
    high *= 2;
    if (high > 1e6) return Number.NaN;
  }
  for (let i = 0; i < 80; i += 1) {
    const middle = (low + high) / 2;
    if (airCoil(middle, diameter, middle * pitch) < l) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
