import type { Bound, Look } from '../../fields/workings.ts';
import type { SweepModel } from './sweepModel.ts';

export const modelOf = (look: Look): SweepModel => look('sweep.fit') as SweepModel;

/** A number that the stage's own code supplies. */
export const given = (value: number, unit: 'Hz' | 'H' | 'F' | 'Ω' | '1' | 'dB', says: string) =>
  ({ value, unit, says }) as const;

const step = (formula: string, unit: 'Ω' | '1', says: string): Bound => ({ formula, unit, says });

/** What the fitted circuit passes at a frequency, dB against a wire, as a formula of its own steps. */
export function passedFormula(
  look: Look,
  at: Bound,
): { formula: string; where: Record<string, Bound> } {
  const { fitted } = modelOf(look);
  const shunt = fitted?.shunt ?? 0;
  const level = fitted?.level ?? 0;
  const where: Record<string, Bound> = {
    f: at,
    f_s: 'sweep.fs',
    L_m: 'sweep.lm',
    R_m: resistanceOf(look),
    C_x: 'sweep.c0All',
    R_T: 'sweep.resistance',
    X_m: step(
      '2 * pi * f * L_m * (f - f_s) * (f + f_s) / f^2',
      'Ω',
      'reactance of the motional arm',
    ),
    D_r: step('1 - 2 * pi * f * C_x * X_m', '1', 'what C0 makes of it, real part'),
    D_i: step('2 * pi * f * C_x * R_m', '1', 'the same, imaginary part'),
    Z_r: step('(R_m * D_r + X_m * D_i) / (D_r^2 + D_i^2)', 'Ω', 'resistance of the crystal'),
    Z_x: step('(X_m * D_r - R_m * D_i) / (D_r^2 + D_i^2)', 'Ω', 'reactance of the crystal'),
  };
  const off = level === 0 ? '' : 'A_f + ';
  if (level !== 0) where.A_f = given(level, 'dB', 'level with a wire, as found');
  if (shunt === 0) {
    const formula = `${off}20 * log10(2 * R_T / sqrt((2 * R_T + Z_r)^2 + Z_x^2))`;
    return { formula, where };
  }
  where.C_s = given(shunt, 'F', 'capacitance from each side to ground');
  where.a = step('2 * pi * f * C_s * R_T', '1', 'resistance over that reactance');
  where.T = step('1 / (1 + a^2)', '1', 'what it takes off');
  return {
    formula: `${off}20 * log10(2 * R_T * T / sqrt((2 * R_T * T + Z_r)^2 + (Z_x - 2 * R_T * a * T)^2))`,
    where,
  };
}

/** Rm, also where it came out below zero and is no answer. */
export const resistanceOf = (look: Look): Bound =>
  look('sweep.rm') === null
    ? given(modelOf(look).fitted?.rm ?? 0, 'Ω', 'motional resistance as it came out')
    : 'sweep.rm';
