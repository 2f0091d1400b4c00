/** Frequencies of one oscillator with two loads on its crystal. */
export interface ShiftReadings {
  /** Hz, and the capacitance that the motional arm's holder meets there besides its own, F. */
  readonly first: number;
  readonly firstLoad: number;
  readonly second: number;
  readonly secondLoad: number;
  /** The holder's capacitance, F. */
  readonly c0: number;
}

/** Hz, H, F: what two frequencies give; the resistance is not among it. */
export interface LosslessArm {
  readonly fs: number;
  readonly lm: number;
  readonly cm: number;
}

/** Capacitance of an oscillator through a capacitor in series with the crystal; null: none there. */
export const loadThrough = (oscillator: number, series: number | null): number =>
  series === null ? oscillator : (oscillator * series) / (oscillator + series);

/**
 * Motional arm from two frequencies of an oscillator. Loss left out.
 *
 * In the loop the arm's reactance meets C0 + C_L, so ω²L_m = 1/C_m + 1/(C0 + C_L) at each reading:
 * two equations, linear in L_m and 1/C_m, and exact. The crystal's resistance moves each frequency
 * by about ωC0·R_m²/(4πL_m), a few tenths of a hertz.
 *
 * @return null where the higher frequency does not go with the smaller load
 * Source: closed form of the equivalent circuit (IEC 60122-1); the makers' Δf/f formula is its first order.
 */
export function crystalFromShift(readings: ShiftReadings): LosslessArm | null {
  const { first, firstLoad, second, secondLoad, c0 } = readings;
  const elastance1 = 1 / (c0 + firstLoad);
  const elastance2 = 1 / (c0 + secondLoad);
  const lm =
    (elastance2 - elastance1) / (4 * Math.PI * Math.PI * (second - first) * (second + first));
  const square = first * first - elastance1 / (4 * Math.PI * Math.PI * lm);
  if (!(lm > 0 && square > 0)) return null;
  const fs = Math.sqrt(square);
  return { fs, lm, cm: 1 / ((2 * Math.PI * fs) ** 2 * lm) };
}

/**
 * The usual shortcut, which leaves out the oscillator and the holder: C_m = 2·Δf/f over the
 * difference of 1/C_s; without a capacitor in the first reading that is 2C_s·Δf/f.
 */
export function crystalFromShiftShort(
  first: number,
  firstSeries: number | null,
  second: number,
  secondSeries: number,
): LosslessArm | null {
  const elastance1 = firstSeries === null ? 0 : 1 / firstSeries;
  const cm = (2 * (second - first)) / first / (1 / secondSeries - elastance1);
  const fs = first * (1 - (cm * elastance1) / 2);
  return cm > 0 && fs > 0 ? { fs, lm: 1 / ((2 * Math.PI * fs) ** 2 * cm), cm } : null;
}
