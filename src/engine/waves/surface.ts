import type { Ground } from './ground.ts';

/** How a ground looks to a wave that runs along it; time goes as exp(−iωt). */
export interface Surface {
  /** Wave number, 1/m. */
  readonly k: number;
  /** Surface impedance over that of free space. */
  readonly re: number;
  readonly im: number;
  /** Radius of the earth that bends rays as the air does, m. */
  readonly radius: number;
  /** (k·radius/2)^(1/3). */
  readonly m: number;
}

const LIGHT = 299792458;
const EPSILON = 8.8541878128e-12;

/** Earth's radius times 4/3: the standard atmosphere bends rays that much. */
const RADIUS = (6371e3 * 4) / 3;

/**
 * Surface impedance of a ground for a vertically polarised wave, and the scale of the earth's bend.
 *
 * Δ = √(ε − 1)/ε with ε = ε_r + iσ/(ωε₀).
 *
 * @param frequency Hz
 * Source: Wait, Electromagnetic Waves in Stratified Media, 1962.
 */
export function surfaceOf(frequency: number, ground: Ground): Surface {
  const k = (2 * Math.PI * frequency) / LIGHT;
  const er = ground.permittivity;
  const ei = ground.conductivity / (2 * Math.PI * frequency * EPSILON);
  const size = Math.hypot(er - 1, ei);
  const rr = Math.sqrt((size + er - 1) / 2);
  const ri = Math.sqrt((size - er + 1) / 2);
  const whole = er * er + ei * ei;
  return {
    k,
    re: (rr * er + ri * ei) / whole,
    im: (ri * er - rr * ei) / whole,
    radius: RADIUS,
    m: Math.cbrt((k * RADIUS) / 2),
  };
}
