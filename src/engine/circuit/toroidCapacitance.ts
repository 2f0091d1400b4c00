/** Permittivity of the vacuum, F/m (CODATA). */
export const EPS0 = 8.8541878128e-12;

/** Relative permittivity of wire enamel (common value, from memory). */
export const ENAMEL = 3.5;

/**
 * Self-capacitance of a single layer of touching turns on a core, F: an upper estimate.
 *
 * Turn to turn C_tt = ε₀ℓ[ε_r θ/ln(D/d) + cot(θ/2) − cot(π/12)] with cos θ = 1 − ln(D/d)/ε_r; the
 * whole of many turns over a conducting core tends to 1.366·C_tt. Spread turns have less.
 *
 * @param turnLength length of one turn, m
 * @param bare diameter of the copper, m
 * @param overall diameter over the enamel, m
 * Source: Massarini & Kazimierczuk, Self-capacitance of inductors, IEEE Trans. Power Electronics
 * 12, 1997 (from memory).
 */
export function toroidCapacitance(turnLength: number, bare: number, overall: number): number {
  const log = Math.log(overall / bare);
  const theta = Math.acos(1 - log / ENAMEL);
  const gap = (ENAMEL * theta) / log + 1 / Math.tan(theta / 2) - 1 / Math.tan(Math.PI / 12);
  return 1.366 * EPS0 * turnLength * gap;
}
