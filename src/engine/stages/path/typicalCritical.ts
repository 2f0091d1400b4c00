import type { Season } from './sun.ts';

/** Critical frequency of the F2 layer, Hz: with the sun high or gone, at R12 = 0 and 100. */
export interface CriticalRow {
  readonly day: readonly [number, number];
  readonly night: readonly [number, number];
}

/**
 * Typical foF2 at middle latitudes. A rough figure to start from, not a forecast: days differ by
 * ±25 % and more. An ionosonde's reading of today is far better.
 * Source: from memory of mid-latitude monthly medians; common practice, no source.
 */
export const typicalCriticals: Readonly<Record<Season, CriticalRow>> = {
  winter: { day: [6.0e6, 11.0e6], night: [2.5e6, 4.0e6] },
  equinox: { day: [6.0e6, 10.0e6], night: [3.0e6, 5.5e6] },
  summer: { day: [5.0e6, 7.5e6], night: [3.5e6, 6.0e6] },
};

/**
 * How much of the day's value holds: 0 at night, 1 by day, rising in a straight line with cos χ
 * from 0.2 below the horizon to 0.2 above it.
 *
 * @param zenith angle of the sun, rad
 */
export function dayShare(zenith: number): number {
  return Math.min(1, Math.max(0, 0.5 + 2.5 * Math.cos(zenith)));
}

/**
 * Typical critical frequency of the F2 layer, Hz, in a straight line over R12 and the day's share.
 *
 * @param season of the hemisphere
 * @param sunspots twelve-month running mean R12
 * @param share from `dayShare`
 */
export function typicalCritical(season: Season, sunspots: number, share: number): number {
  const { day, night } = typicalCriticals[season];
  const at = ([quiet, active]: readonly [number, number]) =>
    quiet + ((active - quiet) * sunspots) / 100;
  return at(night) + (at(day) - at(night)) * share;
}
