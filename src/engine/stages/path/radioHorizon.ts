import { EARTH_RADIUS } from './hop.ts';

/** Effective Earth radius factor of the standard atmosphere (ITU-R P.310). */
export const STANDARD_REFRACTION = 4 / 3;

/**
 * Greatest distance at which two antennas see one another over a smooth Earth, m.
 *
 * Source: closed form, √(2kR h1) + √(2kR h2) with k = 4/3 (ITU-R P.310 for the factor).
 *
 * @param own height of the antenna over ground, m
 * @param far height of the other, m
 */
export function radioHorizon(own: number, far: number): number {
  const diameter = 2 * STANDARD_REFRACTION * EARTH_RADIUS;
  return Math.sqrt(diameter * own) + Math.sqrt(diameter * far);
}
