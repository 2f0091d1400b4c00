import { type OscillatorCrystal, pulledFrequency } from './colpitts.ts';

/** Smallest capacitor that a trimmer and its wiring leave in series, F. */
export const LEAST_SERIES = 2e-12;
/** Largest reactance of a series coil that leaves the crystal in charge, Ω. */
export const LARGEST_COIL = 500;
/** Largest pull by a coil, as a fraction of the frequency. */
export const LARGEST_PULL = 5e-4;

export interface Reach {
  /** Without a series part, Hz. */
  readonly bare: number | null;
  /** With the largest coil, Hz. */
  readonly low: number | null;
  /** With the smallest capacitor, Hz. */
  readonly high: number | null;
  /** What ends the reach downwards: the coil's reactance, or the pull itself. */
  readonly lowBy: 'coil' | 'pull';
}

/**
 * Frequencies that an oscillator can be pulled to. Null where the crystal has too much loss.
 *
 * @param x the crystal, or several in parallel as one
 * @param divider capacitance that the oscillator shows, F
 * Limits of the coil: builders' experience; beyond them the coil's own drift shows.
 */
export function reach(x: OscillatorCrystal, divider: number): Reach {
  const bare = pulledFrequency(x, divider);
  const high = pulledFrequency(x, 1 / (1 / divider + 1 / LEAST_SERIES));
  const limit = coilLimit(x);
  // The coil whose reactance is the limit at the frequency that it makes.
  let low: number | null = x.fs;
  for (let i = 0; i < 8 && low !== null; i += 1) {
    low = pulledFrequency(x, divider, limit / (2 * Math.PI * low));
  }
  const pulled = bare === null ? null : bare * (1 - LARGEST_PULL);
  if (low === null || (pulled !== null && pulled > low)) {
    return { bare, low: pulled, high, lowBy: 'pull' };
  }
  return { bare, low, high, lowBy: 'coil' };
}

/** Largest coil reactance, Ω: 500, or half that of the holder where it would come near resonance. */
const coilLimit = ({ fs, c0 }: OscillatorCrystal): number =>
  Math.min(LARGEST_COIL, 1 / (4 * Math.PI * fs * c0));
