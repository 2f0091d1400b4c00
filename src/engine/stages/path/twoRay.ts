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

/** A reflection coefficient: real and imaginary part, phase reference at the ground. */
export interface Reflection {
  readonly real: number;
  readonly imaginary: number;
}

/**
 * Plane-wave reflection coefficient of flat, smooth ground.
 *
 * Time convention e^{jωt}, complex permittivity ε − j60λσ. Surface and ground waves are not in it.
 * Source: Fresnel's equations (ITU-R P.527 annex for the complex permittivity).
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
  const epsilon = ground.permittivity;
  const lossy = -(DISPLACEMENT * ground.conductivity * SPEED_OF_LIGHT) / frequency;
  const sine = Math.sin(grazing);
  // root = √(ε − cos²ψ), the branch with a negative imaginary part
  const under = epsilon - Math.cos(grazing) ** 2;
  const size = Math.hypot(under, lossy);
  const rootRe = Math.sqrt((size + under) / 2);
  const rootIm = -Math.sqrt((size - under) / 2);
  const scaleRe = polarisation === 'vertical' ? epsilon * sine : sine;
  const scaleIm = polarisation === 'vertical' ? lossy * sine : 0;
  const topRe = scaleRe - rootRe;
  const topIm = scaleIm - rootIm;
  const botRe = scaleRe + rootRe;
  const botIm = scaleIm + rootIm;
  const square = botRe * botRe + botIm * botIm;
  return {
    real: (topRe * botRe + topIm * botIm) / square,
    imaginary: (topIm * botRe - topRe * botIm) / square,
  };
}

/**
 * What the ground-reflected ray adds to or takes from the direct one, dB over free space.
 * Between +6 dB and a deep null; near −20 log of the distance when both antennas are low.
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
  const ratio = direct / bounced;
  const real = 1 + ratio * (mirror.real * Math.cos(lag) + mirror.imaginary * Math.sin(lag));
  const imaginary = ratio * (mirror.imaginary * Math.cos(lag) - mirror.real * Math.sin(lag));
  return 20 * Math.log10(Math.hypot(real, imaginary));
}
