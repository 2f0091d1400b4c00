import type { Unit } from '../quantity/units.ts';
import type { Ground } from './ground.ts';
import { DISPLACEMENT } from './reflection.ts';

type Step =
  | { readonly value: number; readonly unit: Unit; readonly says: string }
  | { readonly formula: string; readonly unit: Unit; readonly says: string };

/**
 * Symbols of Fresnel's coefficient as steps, from ψ (symbol `psi`), f_0 and c that the caller
 * binds: p and q of its root, a and b of the term before it, then its size `rho` and turn `tau`.
 */
export function reflectionSteps(
  ground: Ground,
  polarisation: 'horizontal' | 'vertical',
): Readonly<Record<string, Step>> {
  const upright = polarisation === 'vertical';
  return {
    Z_60: { value: DISPLACEMENT, unit: 'Ω', says: 'impedance of free space over 2π' },
    sigma: { value: ground.conductivity, unit: 'S/m', says: 'conductivity of the ground' },
    epsilon: { value: ground.permittivity, unit: '1', says: 'relative permittivity' },
    g: { formula: 'Z_60 * sigma * c / f_0', unit: '1', says: 'loss of the ground, 60λσ' },
    v: { formula: 'epsilon - cos(psi)^2', unit: '1', says: 'real part under the root' },
    p: { formula: 'sqrt((sqrt(v^2 + g^2) + v) / 2)', unit: '1', says: 'real part of the root' },
    q: { formula: 'g / (2 * p)', unit: '1', says: 'imaginary part of the root, negative' },
    a: {
      formula: upright ? 'epsilon * sin(psi)' : 'sin(psi)',
      unit: '1',
      says: `real part of the ${upright ? 'vertical' : 'horizontal'} wave’s term`,
    },
    b: {
      formula: upright ? 'g * sin(psi)' : '0 * psi',
      unit: '1',
      says: 'imaginary part of it, negative',
    },
    rho: { formula: REFLECTION_SIZE, unit: '1', says: 'size of the reflection' },
    tau: { formula: REFLECTION_TURN, unit: '°', says: 'turn of the reflection' },
  };
}

export const REFLECTION_SIZE = 'sqrt((a - p)^2 + (q - b)^2) / sqrt((a + p)^2 + (q + b)^2)';
export const REFLECTION_TURN = 'atan2(q - b, a - p) + atan2(q + b, a + p)';

/** Steps of the gain of an antenna over ground, after `reflectionSteps`: symbol and formula. */
export const levelGainFormula =
  '10 * log10(G_d * (cos(pi / 2 * s_a) / sqrt(max(1e-12, 1 - s_a^2)))^2 * (1 + rho^2 + 2 * rho * cos(tau - lag)) * R_d / R_f * eta)';
export const uprightGainFormula = {
  quarter:
    '10 * log10(max(1e-9, G_m * (cos(pi / 2 * sin(psi)) / max(1e-9, cos(psi)))^2 * (1 + rho^2 + 2 * rho * cos(tau)) / 4) * eta)',
  short: '10 * log10(max(1e-9, G_m * cos(psi)^2 * (1 + rho^2 + 2 * rho * cos(tau)) / 4) * eta)',
} as const;
