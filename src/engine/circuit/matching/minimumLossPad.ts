/** Two resistors between two resistances, matched both ways. Ω, dB. */
export interface Pad {
  /** In series with the higher resistance. */
  readonly series: number;
  /** Across the lower one. */
  readonly shunt: number;
  readonly loss: number;
}

/**
 * The pad of least loss between two resistances: R_s = √(R_h(R_h − R_l)), R_p = R_l·√(R_h/(R_h − R_l)),
 * loss 20 log(√(R_h/R_l) + √(R_h/R_l − 1)).
 *
 * @param a one resistance, Ω
 * @param b the other, Ω
 * @return null where they are alike
 * Source: closed form; any handbook on attenuators.
 */
export function minimumLossPad(a: number, b: number): Pad | null {
  if (a === b) return null;
  const high = Math.max(a, b);
  const low = Math.min(a, b);
  const ratio = high / low;
  return {
    series: Math.sqrt(high * (high - low)),
    shunt: low * Math.sqrt(high / (high - low)),
    loss: 20 * Math.log10(Math.sqrt(ratio) + Math.sqrt(ratio - 1)),
  };
}
