/** What is read with a crystal in series between two equal resistances. */
export interface FixtureReadings {
  /** Frequency of the peak, Hz. */
  readonly peak: number;
  /** Loss at the peak against a short circuit in the crystal's place, dB. */
  readonly loss: number;
  /** Width of the peak, Hz … */
  readonly width: number;
  /** … where it has fallen by so much, dB. */
  readonly drop: number;
  /** Resistance at either end, Ω. */
  readonly end: number;
  /** All that lies across the motional arm: the holder, and the fixture's own, F. */
  readonly shunt: number;
}

/** Motional arm of a crystal as readings give it. Hz, H, F, Ω. */
export interface MotionalArm {
  readonly fs: number;
  readonly lm: number;
  readonly cm: number;
  readonly rm: number;
}

/** What the readings cannot be: such a loss, or such a width. */
export type FixtureMisfit = 'loss' | 'drop';

/**
 * Motional arm of a crystal from its peak in a fixture, with the holder's capacitance in the circuit.
 *
 * Against a short circuit the loss is A = |1 + Z/2R|² as a ratio of powers, where Z is the arm
 * R_m + jX in parallel with b = ωC. A − 1 is a quotient of two quadratics in X. At a level that the
 * curve touches in one point (the peak) their pencil has a double root, which gives
 * R_m = 2R(√A − 1)/(1 − λb²) with λ = (2R)²(A − 1); at a level that it crosses twice the two roots
 * give L_m = ΔX/(4π·width). C is taken as constant over the peak: that, and the curvature of the
 * arm's reactance, make parts in a million.
 *
 * @return the arm; `loss` where so much cannot be at the peak, `drop` where the capacitance lets
 *   so much past that the curve never falls that far
 * Source: closed form of the equivalent circuit (IEC 60122-1) in the fixture of IEC 60444; without
 * the capacitance it is IEC 60444-1's R = 2R_T(10^(a/20) − 1).
 */
export function crystalInFixture(readings: FixtureReadings): MotionalArm | FixtureMisfit {
  const { peak, loss, width, drop, end, shunt } = readings;
  const r2 = 2 * end;
  const w = 2 * Math.PI * peak;
  const b2 = (w * shunt) ** 2;
  const a = 10 ** (loss / 10);
  const a3 = 10 ** ((loss + drop) / 10);
  const g = 1 - r2 * r2 * (a - 1) * b2;
  const g3 = 1 - r2 * r2 * (a3 - 1) * b2;
  if (!(g > 0)) return 'loss';
  if (!(g3 > 0)) return 'drop';
  const rm = (r2 * (Math.sqrt(a) - 1)) / g;
  const span = (2 * Math.sqrt(r2 * r2 * a3 - (rm * g3 + r2) ** 2)) / g3;
  if (!(span > 0)) return 'drop';
  const lm = span / (4 * Math.PI * width);
  const fs = Math.sqrt(peak * peak + (r2 * r2 * (a - 1) * shunt * peak * peak) / (g * lm));
  return { fs, lm, cm: 1 / ((2 * Math.PI * fs) ** 2 * lm), rm };
}

/**
 * The same by the usual shortcut: no capacitance, half the power at the edges.
 * R_m = 2R(10^(a/20) − 1), L_m = (2R + R_m)/(2π·width).
 */
export function crystalInFixtureShort(
  readings: Omit<FixtureReadings, 'shunt' | 'drop'>,
): MotionalArm {
  const { peak, loss, width, end } = readings;
  const rm = 2 * end * (10 ** (loss / 20) - 1);
  const lm = (2 * end + rm) / (2 * Math.PI * width);
  return { fs: peak, lm, cm: 1 / ((2 * Math.PI * peak) ** 2 * lm), rm };
}
