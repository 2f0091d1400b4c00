/** Complex numbers side by side. */
export interface Roots {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** Steps after which a root that still moves is left as it is. */
const MOST_STEPS = 200;

/**
 * All roots of a polynomial with real coefficients, found together.
 *
 * Good to the digits that the coefficients determine: simple roots nearly to the last, a root that
 * is m-fold to about one m-th of them.
 *
 * @param coefficients from the constant upwards; first and last not zero
 * @returns as many as the degree, conjugates as pairs in no certain order
 * @source O. Aberth, Iteration methods for finding all zeros of a polynomial simultaneously,
 * Math. Comp. 27, 1973
 */
export function polynomialRoots(coefficients: readonly number[]): Roots {
  const n = coefficients.length - 1;
  const at = (k: number) => coefficients[k] ?? 0;
  // In a variable in which first and last coefficient are alike the roots lie about the unit circle.
  const scale = n > 0 ? Math.abs(at(0) / at(n)) ** (1 / n) : 1;
  const scaled = Float64Array.from(coefficients, (c, k) => (c * scale ** k) / at(0));
  const re = Float64Array.from({ length: n }, (_, i) => Math.cos((2 * Math.PI * i + 0.7) / n));
  const im = Float64Array.from({ length: n }, (_, i) => Math.sin((2 * Math.PI * i + 0.7) / n));
  const step = new Float64Array(2);
  for (let round = 0; round < MOST_STEPS; round += 1) {
    let moved = 0;
    for (let i = 0; i < n; i += 1) {
      newtonStep(scaled, re[i] as number, im[i] as number, step);
      // Aberth: the others push away, w = N/(1 − N·Σ 1/(z − zj)).
      let sr = 0;
      let si = 0;
      for (let j = 0; j < n; j += 1) {
        if (j === i) continue;
        const dr = (re[i] as number) - (re[j] as number);
        const di = (im[i] as number) - (im[j] as number);
        const size = 1 / (dr * dr + di * di);
        sr += dr * size;
        si -= di * size;
      }
      const [nr, ni] = [step[0] as number, step[1] as number];
      const qr = 1 - (nr * sr - ni * si);
      const qi = -(nr * si + ni * sr);
      const size = 1 / (qr * qr + qi * qi);
      const wr = (nr * qr + ni * qi) * size;
      const wi = (ni * qr - nr * qi) * size;
      re[i] = (re[i] as number) - wr;
      im[i] = (im[i] as number) - wi;
      moved = Math.max(moved, Math.hypot(wr, wi) / Math.hypot(re[i] as number, im[i] as number));
    }
    if (moved < 4e-16) break;
  }
  return { re: re.map((x) => x * scale), im: im.map((x) => x * scale) };
}

/** p(z)/p′(z), by Horner's rule. */
function newtonStep(p: Float64Array, zr: number, zi: number, out: Float64Array): void {
  let [vr, vi, dr, di] = [0, 0, 0, 0];
  for (let k = p.length - 1; k >= 0; k -= 1) {
    [dr, di] = [dr * zr - di * zi + vr, dr * zi + di * zr + vi];
    [vr, vi] = [vr * zr - vi * zi + (p[k] as number), vr * zi + vi * zr];
  }
  const size = 1 / (dr * dr + di * di);
  out[0] = (vr * dr + vi * di) * size;
  out[1] = (vi * dr - vr * di) * size;
}
