/** Terms of the series; 32 give twelve digits. */
const TERMS = 32;
const SCALE = Math.sqrt(TERMS / Math.SQRT2);

/** Coefficients of the series, from the highest power down. */
const coefficients = (() => {
  const points = 2 * TERMS;
  const a = new Float64Array(TERMS);
  for (let k = 1 - points; k < points; k += 1) {
    const t = SCALE * Math.tan((k * Math.PI) / points / 2);
    const f = Math.exp(-t * t) * (SCALE * SCALE + t * t);
    for (let n = 1; n <= TERMS; n += 1) {
      a[TERMS - n] =
        (a[TERMS - n] ?? 0) + (f * Math.cos((n * k * Math.PI) / points)) / (2 * points);
    }
  }
  return a;
})();

/**
 * Faddeeva's function w(z) = exp(−z²)·erfc(−iz) in the upper half plane.
 *
 * @param re, im of z; im not below zero
 * @param out receives real and imaginary part
 * Source: Weideman, Computation of the Complex Error Function, SIAM J. Numer. Anal. 31, 1994.
 */
export function faddeeva(re: number, im: number, out: Float64Array): void {
  // Z = (L + iz)/(L − iz)
  const dr = SCALE + im;
  const di = -re;
  const size = dr * dr + di * di;
  const nr = SCALE - im;
  const zr = (nr * dr + re * di) / size;
  const zi = (re * dr - nr * di) / size;
  let pr = 0;
  let pi = 0;
  for (let n = 0; n < TERMS; n += 1) {
    const r = pr * zr - pi * zi + (coefficients[n] ?? 0);
    pi = pr * zi + pi * zr;
    pr = r;
  }
  // 2p/(L − iz)² + 1/(√π·(L − iz))
  const qr = (dr * dr - di * di) / (size * size);
  const qi = (-2 * dr * di) / (size * size);
  out[0] = 2 * (pr * qr - pi * qi) + dr / (size * Math.sqrt(Math.PI));
  out[1] = 2 * (pr * qi + pi * qr) - di / (size * Math.sqrt(Math.PI));
}
