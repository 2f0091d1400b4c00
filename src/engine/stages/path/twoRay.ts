import { SPEED_OF_LIGHT } from './freeSpaceLoss.ts';

/** Electrical constants of the ground. */
export interface Ground {
  /** S/m */
  readonly conductivity: number;
  /** Relative permittivity. */
  readonly permittivity: number;
}

/** Ground classes. Source: ITU-R P.527 and P.832 (from memory). */
export const grounds = {
  sea: { conductivity: 5, permittivity: 70 },
  wet: { conductivity: 0.01, permittivity: 30 },
  average: { conductivity: 0.003, permittivity: 22 },
  dry: { conductivity: 0.001, permittivity: 15 },
} as const satisfies Readonly<Record<string, Ground>>;

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

/**
 * What the ground-reflected ray adds to or takes from the direct one, dB over free space.
 * Between +6 dB and a deep null; falling as the square of distance when both antennas are low.
 *
 * Flat ground, isotropic antennas of one polarisation. Source: two-ray model, closed form.
 *
 * @param distance along the ground, m
 * @param own height, m
 * @param far height, m
 * @param frequency Hz
 * @param mirror reflection coefficient at the grazing angle
 */
export function twoRayGain(
  distance: number,
  own: number,
  far: number,
  frequency: number,
  mirror: Reflection,
): number {
  const direct = Math.hypot(distance, own - far);
  const bounced = Math.hypot(distance, own + far);
  // difference of the two lengths without cancellation
  const longer = (4 * own * far) / (direct + bounced);
  const lag = (2 * Math.PI * longer * frequency) / SPEED_OF_LIGHT;
  const second = (mirror.size * direct) / bounced;
  return 10 * Math.log10(1 + second * second + 2 * second * Math.cos(mirror.turn - lag));
}
