import { EARTH_RADIUS, hopReach } from './hop.ts';

/**
 * The nearest ground distance to which a layer returns a frequency, m: 0 where it is returned even
 * straight down; null where even the flattest ray goes through.
 *
 * Source: secant law f = f_crit · sec i turned round (Martyn's theorem, thin layer).
 *
 * @param frequency Hz
 * @param critical frequency of the layer at vertical incidence, Hz
 * @param height virtual height of the layer, m
 */
export function skipDistance(frequency: number, critical: number, height: number): number | null {
  if (frequency <= critical) return 0;
  const sine = Math.sqrt(1 - (critical / frequency) ** 2);
  const cosElevation = (sine * (EARTH_RADIUS + height)) / EARTH_RADIUS;
  return cosElevation > 1 ? null : hopReach(Math.acos(cosElevation), height);
}
