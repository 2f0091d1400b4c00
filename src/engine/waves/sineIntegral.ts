/** Beyond this the expansion for large arguments is used. */
const FAR = 18;

const EULER = 0.5772156649015329;

/**
 * Sine and cosine integral, Si(x) and Ci(x), for x above 0; good to nine digits.
 *
 * @param out receives Si, Ci
 * Source: Abramowitz & Stegun, 5.2.14, 5.2.16 (series), 5.2.8, 5.2.9, 5.2.34, 5.2.35 (expansion).
 */
export function sineIntegral(x: number, out: Float64Array): void {
  if (x > FAR) {
    let f = 0;
    let g = 0;
    let term = 1;
    // Terms fall until k comes near x, then grow: stop there.
    for (let k = 0; k < x - 2; k += 2) {
      f += term;
      g += term * (k + 1);
      term *= (-(k + 1) * (k + 2)) / (x * x);
      if (Math.abs(term) < 1e-17) break;
    }
    f /= x;
    g /= x * x;
    out[0] = Math.PI / 2 - f * Math.cos(x) - g * Math.sin(x);
    out[1] = f * Math.sin(x) - g * Math.cos(x);
    return;
  }
  let si = 0;
  let ci = EULER + Math.log(x);
  let term = 1;
  for (let k = 1; k < 120; k += 1) {
    term *= x / k;
    // Powers 1, 5, 9 … add to Si, 3, 7 … take away; 4, 8 … add to Ci, 2, 6 … take away.
    const sign = k % 4 === 1 || k % 4 === 0 ? 1 : -1;
    if (k % 2 === 1) si += (sign * term) / k;
    else ci += (sign * term) / k;
    if (k > x && term < 1e-18) break;
  }
  out[0] = si;
  out[1] = ci;
}
