/** The ways that a signal can go, in the order of their numbers in `way`. */
export const ways = ['none', 'ground', 'e', 'f2'] as const;

/** The grades of speech, in the order of their numbers in `grade`. */
export const grades = ['none', 'justUsable', 'marginal', 'good'] as const;

/** What a cell's sum is made of: gains dBi, elevation rad, losses dB. */
export const cellTerms = [
  'here',
  'there',
  'elevation',
  'spreading',
  'absorption',
  'touching',
  'surface',
] as const;

export type CellTerm = (typeof cellTerms)[number];

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
  /** Index in `grades`. */
  readonly grade: Uint8Array;
  /** Index in `ways`. */
  readonly way: Uint8Array;
  /** Hops; 0 along the ground. */
  readonly hops: Uint8Array;
  /** One figure a cell; nothing that counts where nothing arrives. */
  readonly terms: Readonly<Record<CellTerm, Float64Array>>;
  /** The same for all cells: power and noise in dBm, lines in dB. */
  readonly ends: {
    readonly power: number;
    readonly lineHere: number;
    readonly lineThere: number;
    /** null where it is not known. */
    readonly noise: number | null;
  };
  /** Hours of the day at which speech gets through over the distance planned. */
  readonly hoursOpen: number;
  /** How it comes about, in words. */
  readonly how: string;
}
