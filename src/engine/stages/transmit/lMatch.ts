/**
 * The L-match that makes one resistance of another: a coil in series with the lower one, a
 * capacitor across the higher one, Q = √(R_high/R_low − 1).
 *
 * @param a, b the two resistances, Ω
 * @param frequency Hz
 * @return Q, coil H, capacitor F; all 0 where the two are equal
 * Source: closed form; any text on impedance matching.
 */
export function lMatch(a: number, b: number, frequency: number) {
  const low = Math.min(a, b);
  const high = Math.max(a, b);
  const w = 2 * Math.PI * frequency;
  const q = Math.sqrt(high / low - 1);
  return { matchQ: q, matchCoil: (q * low) / w, matchCapacitor: q / (w * high) };
}
