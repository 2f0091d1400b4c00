/** The ways that a signal can go, in the order of their numbers in `way`. */
export const ways = ['none', 'ground', 'e', 'f2'] as const;

/** A day of the path: one cell for each hour and distance, hour by hour. */
export interface DayAnswer {
  /** Hours of the day, s. */
  readonly hours: Float64Array;
  /** Along the ground, m, rising. */
  readonly distances: Float64Array;
  /** dBm at the other receiver; −Infinity where nothing arrives. */
  readonly received: Float64Array;
  /** dB in the filter's bandwidth; empty where the noise is not known. */
  readonly snr: Float64Array;
  /** Grade of speech: 0 none, 1 just usable, 2 fair, 3 good. */
  readonly grade: Uint8Array;
  /** Index in `ways`. */
  readonly way: Uint8Array;
  /** Hops; 0 along the ground. */
  readonly hops: Uint8Array;
  /** Hours of the day at which speech gets through over the distance planned. */
  readonly hoursOpen: number;
  /** How it comes about, in words. */
  readonly how: string;
}
