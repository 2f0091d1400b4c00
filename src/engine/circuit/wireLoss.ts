/** Resistivity of annealed copper at 20 °C, Ω·m (IEC 60028). */
export const COPPER = 1.7241e-8;

/** Permeability of the vacuum, H/m (CODATA; the old exact value within 2e-10). */
export const MU0 = 4e-7 * Math.PI;

/**
 * Skin depth in copper, m: √(ρ/(π f μ₀)); 66.1 µm at 1 MHz.
 *
 * @param frequency Hz
 */
export function skinDepth(frequency: number): number {
  return Math.sqrt(COPPER / (Math.PI * frequency * MU0));
}

/**
 * Direct-current resistance of round copper wire at 20 °C, Ω.
 *
 * @param length m
 * @param diameter of the bare copper, m
 */
export function wireResistance(length: number, diameter: number): number {
  return (COPPER * length) / ((Math.PI / 4) * diameter * diameter);
}

/**
 * How many times a straight round wire's resistance rises by the skin effect.
 *
 * With x = radius over skin depth: x/2 + 1/4 + 3/(32x) from x = 2.9 up, 1 + x⁴/(48 + 0.7x⁴)
 * below; within 1 % of the exact Bessel solution everywhere.
 *
 * @param diameter of the bare copper, m
 * @param frequency Hz
 * Source: asymptotic series of the exact solution; below, its first term with a constant fitted to it.
 */
export function skinRise(diameter: number, frequency: number): number {
  const x = diameter / 2 / skinDepth(frequency);
  return x < SKIN_SPLIT ? 1 + x ** 4 / (48 + 0.7 * x ** 4) : x / 2 + 0.25 + 3 / (32 * x);
}

/** Radius over skin depth where `skinRise` goes from one series to the other. */
export const SKIN_SPLIT = 2.9;

/**
 * How many times neighbouring turns raise a winding's resistance beyond the skin effect:
 * 1 + 2.4·s^1.4 for bare diameter over pitch s, of a long single-layer coil well above the
 * frequency where skin effect sets in.
 *
 * Fit to Medhurst's column for long coils, H.F. Resistance and Self-Capacitance of Single-Layer
 * Solenoids, Wireless Engineer, 1947 (column from memory; the fit within 5 %).
 *
 * @param s bare diameter over pitch, 0 to 1
 */
export function proximityRise(s: number): number {
  return 1 + 2.4 * s ** 1.4;
}
