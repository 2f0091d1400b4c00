/** Radiation resistance figure of the textbooks: 30 Ω turns e.i.r.p. into (V/m·m)². */
export const FIELD_FACTOR = 30;

/**
 * Field strength of a wave that has travelled free of obstacles, V/m rms.
 *
 * With power in dBW and distance in km: E(dBµV/m) = P + 74.8 − 20 log d.
 * Source: ITU-R P.525, E = √(30 p)/d. The factor 30 is η0/4π = 29.979 rounded.
 *
 * @param eirp power towards the other end times antenna gain, W
 * @param length of the ray, m
 */
export function fieldStrength(eirp: number, length: number): number {
  return Math.sqrt(FIELD_FACTOR * eirp) / length;
}
