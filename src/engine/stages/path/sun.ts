const TILT = (23.44 * Math.PI) / 180;

/** Declination of the sun in mid-season for the hemisphere's own summer, rad. */
export const declinations = { winter: -TILT, equinox: 0, summer: TILT } as const;

export type Season = keyof typeof declinations;

/**
 * Angle between the sun and straight up, rad, 0 to π.
 *
 * Source: spherical trigonometry, cos χ = sin φ sin δ + cos φ cos δ cos H with H = 15° per hour
 * from local noon.
 *
 * @param latitude rad, positive in the hemisphere whose seasons are meant
 * @param declination of the sun, rad
 * @param hourAngle local solar time as an angle from noon, rad
 */
export function sunZenith(latitude: number, declination: number, hourAngle: number): number {
  const cosine =
    Math.sin(latitude) * Math.sin(declination) +
    Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle);
  return Math.acos(Math.min(1, Math.max(-1, cosine)));
}
