/** Mean radius of the Earth, m (ITU-R P.533 and the usual figure). */
export const EARTH_RADIUS = 6_371_000;

/** One reflection at a thin layer at a virtual height, with the ends on the ground. */
export interface Hop {
  /** Elevation of the ray over the horizon at either end, rad. Below zero: hidden by the Earth. */
  readonly elevation: number;
  /** Secant of the angle of incidence at the layer. */
  readonly secant: number;
  /** Length of the whole ray up and down, m. */
  readonly slant: number;
}

/**
 * Geometry of one hop over a spherical Earth by straight rays to a mirror at the virtual height.
 *
 * Refraction below the layer and the layer's own tilt and curvature are left out.
 * Source: spherical trigonometry, closed form (as in ITU-R P.533, section on ray path geometry).
 *
 * @param distance along the ground, m, ≥ 0
 * @param height virtual height of the layer, m, > 0
 */
export function hop(distance: number, height: number): Hop {
  const half = distance / (2 * EARTH_RADIUS);
  const layer = EARTH_RADIUS + height;
  // height of the layer's mid-point over the end's horizon plane, and its distance along that plane
  const up = layer * Math.cos(half) - EARTH_RADIUS;
  const out = layer * Math.sin(half);
  const elevation = Math.atan2(up, out);
  return {
    elevation,
    secant: incidenceSecant(elevation, height),
    slant: 2 * Math.hypot(up, out),
  };
}

/**
 * Secant of the angle between a ray and the vertical where it meets a shell above the Earth.
 *
 * Source: law of sines, sin i = R cos(elevation) / (R + h).
 *
 * @param elevation at the ground, rad
 * @param height of the shell, m, > 0
 */
export function incidenceSecant(elevation: number, height: number): number {
  const sine = (EARTH_RADIUS * Math.cos(elevation)) / (EARTH_RADIUS + height);
  return 1 / Math.sqrt(1 - sine * sine);
}

/**
 * Ground distance of the hop whose ray leaves at a given elevation, m.
 * At 0 rad it is the longest hop there is.
 *
 * @param elevation rad, 0 to π/2
 * @param height virtual height of the layer, m
 */
export function hopReach(elevation: number, height: number): number {
  const incidence = Math.asin((EARTH_RADIUS * Math.cos(elevation)) / (EARTH_RADIUS + height));
  return 2 * EARTH_RADIUS * (Math.PI / 2 - elevation - incidence);
}
