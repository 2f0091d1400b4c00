import { bentWave, modesOf } from './bentWave.ts';
import type { Ground } from './ground.ts';
import { planeWave } from './planeWave.ts';
import { surfaceOf } from './surface.ts';

/** Up to this share of the earth's bend the plane does, beyond it the modes: they meet within 0.1 dB. */
const MEET = 0.2;

/**
 * How much weaker than over a perfect flat ground the wave along a real ground is.
 *
 * @param frequency Hz, 0.1 to 30 MHz
 * @param ground its electrical constants
 * @returns a function of distance in m that gives the attenuation in dB: positive is weaker; both
 *   ends at the ground, vertical polarisation
 */
export function groundWave(frequency: number, ground: Ground): (distance: number) => number {
  const surface = surfaceOf(frequency, ground);
  let modes: Float64Array | null = null;
  return (distance) => {
    if ((surface.m * distance) / surface.radius < MEET) {
      return -20 * Math.log10(planeWave(surface, distance));
    }
    modes ??= modesOf(surface);
    return -20 * Math.log10(bentWave(surface, modes, distance));
  };
}
