/**
 * Rollett's stability factor of a two-port: above 1, with |Δ| below 1, no passive source and load
 * can make it oscillate.
 *
 * K = (1 − |s11|² − |s22|² + |Δ|²)/(2|s12·s21|), Δ = s11·s22 − s12·s21. K does not depend on the
 * resistances that the parameters are referred to; |Δ| does, though not whether both conditions hold.
 *
 * @param s real and imaginary parts of s11, s12, s21, s22 in turn
 * @return K, Infinity where nothing comes back or nothing goes forward, and |Δ|
 * @source J. M. Rollett, Stability and Power-Gain Invariants of Linear Twoports, IRE Trans. CT-9
 *   (1962), 29
 */
export function rollett(s: Float64Array): { k: number; delta: number } {
  const at = (i: number) => s[i] as number;
  const backRe = at(2) * at(4) - at(3) * at(5);
  const backIm = at(2) * at(5) + at(3) * at(4);
  const re = at(0) * at(6) - at(1) * at(7) - backRe;
  const im = at(0) * at(7) + at(1) * at(6) - backIm;
  const delta = re * re + im * im;
  const s11 = at(0) ** 2 + at(1) ** 2;
  const s22 = at(6) ** 2 + at(7) ** 2;
  return {
    k: (1 - s11 - s22 + delta) / (2 * Math.hypot(backRe, backIm)),
    delta: Math.sqrt(delta),
  };
}
