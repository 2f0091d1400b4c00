import { SPEED_OF_LIGHT } from './freeSpaceLoss.ts';
import type { Ground } from './ground.ts';

/** Wave impedance of free space over 2π, Ω: the "60" in ε − j60λσ, unrounded. */
export const DISPLACEMENT = 376.730313668 / (2 * Math.PI);

/** A reflection coefficient. */
export interface Reflection {
  /** Ratio of the reflected wave to the arriving one. */
  readonly size: number;
  /** Phase turn at the ground, rad: near π for a grazing ray. */
  readonly turn: number;
}

/**
 * Plane-wave reflection coefficient of flat, smooth ground.
 *
 * Time convention e^{jωt}, complex permittivity ε − j60λσ. Surface and ground waves are not in it.
 * Source: Fresnel's equations (ITU-R P.527 for the complex permittivity).
 *
 * @param grazing angle between ray and ground, rad, > 0
 * @param frequency Hz
 * @param ground its constants
 * @param polarisation of the antennas
 */
export function reflection(
  grazing: number,
  frequency: number,
  ground: Ground,
  polarisation: 'horizontal' | 'vertical',
): Reflection {
  const loss = (DISPLACEMENT * ground.conductivity * SPEED_OF_LIGHT) / frequency;
  // root √(ε − jloss − cos²ψ) = p − jq
  const under = ground.permittivity - Math.cos(grazing) ** 2;
  const size = Math.hypot(under, loss);
  const p = Math.sqrt((size + under) / 2);
  const q = loss / (2 * p);
  // the term in front of the root: sin ψ, or (ε − jloss) sin ψ, as a − jb
  const upright = polarisation === 'vertical';
  const a = Math.sin(grazing) * (upright ? ground.permittivity : 1);
  const b = Math.sin(grazing) * (upright ? loss : 0);
  return {
    size: Math.hypot(a - p, q - b) / Math.hypot(a + p, q + b),
    turn: Math.atan2(q - b, a - p) + Math.atan2(q + b, a + p),
  };
}
