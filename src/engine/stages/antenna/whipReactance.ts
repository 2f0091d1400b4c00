/**
 * Reactance of a short vertical over ground, Ω, positive: what a loading coil has to tune out.
 *
 * A line of impedance 60·(ln(2l/a) − 1), open at its end: Z_m/tan(2πl/λ).
 *
 * @param length m
 * @param diameter of the rod, m
 * @param wavelength m
 * Source: transmission-line view of a thin monopole (Schelkunoff), from memory.
 */
export function whipReactance(length: number, diameter: number, wavelength: number): number {
  const mean = 60 * (Math.log((4 * length) / diameter) - 1);
  return Math.abs(mean / Math.tan((2 * Math.PI * length) / wavelength));
}
