import { dbOfPowerRatio, powerRatioOfDb } from '../quantity/decibel.ts';

/** Noise that an antenna picks up at one kind of place. */
export interface NoiseClass {
  readonly name: string;
  /** Median external noise figure Fam = c − d·log10(f/MHz), dB over kT0B. */
  readonly c: number;
  readonly d: number;
  /** Upper and lower decile of its variation in time, dB over and under the median. */
  readonly upper: number | null;
  readonly lower: number | null;
  /** Hz, where the line holds. */
  readonly from: number;
  readonly to: number;
  readonly source: string;
}

export type NoiseClassKey = 'city' | 'residential' | 'rural' | 'quietRural' | 'galactic';

const source = 'ITU-R P.372, man-made noise, table of c and d (seen second-hand, several agree)';

/** Man-made noise by place, and the galaxy as the least there can be, for a short vertical antenna. */
export const noiseClasses: Readonly<Record<NoiseClassKey, NoiseClass>> = {
  city: {
    name: 'City',
    c: 76.8,
    d: 27.7,
    upper: 11.0,
    lower: 6.7,
    from: 0.3e6,
    to: 250e6,
    source,
  },
  residential: {
    name: 'Residential',
    c: 72.5,
    d: 27.7,
    upper: 10.6,
    lower: 5.3,
    from: 0.3e6,
    to: 250e6,
    source,
  },
  rural: {
    name: 'Rural',
    c: 67.2,
    d: 27.7,
    upper: 9.2,
    lower: 4.6,
    from: 0.3e6,
    to: 250e6,
    source,
  },
  quietRural: {
    name: 'Quiet rural',
    c: 53.6,
    d: 28.6,
    upper: null,
    lower: null,
    from: 0.3e6,
    to: 30e6,
    source,
  },
  galactic: {
    name: 'Galaxy only (above the critical frequency)',
    c: 52,
    d: 23,
    upper: 2,
    lower: 2,
    from: 3e6,
    to: 100e6,
    source: 'ITU-R P.372, galactic noise (c, d seen second-hand; deciles from memory)',
  },
};

/**
 * Median external noise figure of a place, dB over kT0B.
 * @param frequency Hz; outside the class's range the line is only carried on
 */
export function externalNoise(place: NoiseClassKey, frequency: number): number {
  const { c, d } = noiseClasses[place];
  return c - d * Math.log10(frequency / 1e6);
}

/**
 * From here on the galaxy counts, Hz: below the critical frequency of the F2 layer its noise stays
 * outside. The hours at which that lies higher are left out. Source: ITU-R P.372 draws its line from
 * here (from memory).
 */
export const GALAXY_FROM = 10e6;

/** Whether the galaxy is heard beside what machines make at a place. */
export const hearsGalaxy = (place: NoiseClassKey, frequency: number): boolean =>
  place !== 'galactic' && frequency >= GALAXY_FROM;

/**
 * What machines, the galaxy and thunderstorms make at a place: powers add, dB over kT0B.
 *
 * @param atmospheric Fa of atmospheric noise, dB; null for none
 * @param frequency Hz
 * Source: ITU-R P.372, combination of several noises.
 */
export function noiseFromOutside(
  place: NoiseClassKey,
  atmospheric: number | null,
  frequency: number,
): number {
  const made = externalNoise(place, frequency);
  const galaxy = hearsGalaxy(place, frequency) ? externalNoise('galactic', frequency) : null;
  if (galaxy === null && atmospheric === null) return made;
  return dbOfPowerRatio(powerRatioOfDb(made) + powerOf(galaxy) + powerOf(atmospheric));
}

const powerOf = (db: number | null): number => (db === null ? 0 : powerRatioOfDb(db));
