/** A band of the procedure for intelligibility. */
export interface SpeechBand {
  /** Nominal middle, Hz. */
  readonly middle: number;
  /** What it is worth, of 1. */
  readonly importance: number;
  /** Spectrum level of speech with normal effort at 1 m, dB over 20 µPa in a hertz. */
  readonly speech: number;
  /** Spectrum level of the noise that a good ear has of its own, dB. */
  readonly ear: number;
}

/**
 * The eighteen one-third octave bands.
 *
 * @source ANSI S3.5-1997, table 3; the ear's own noise from memory
 */
export const speechBands: readonly SpeechBand[] = (
  [
    [160, 0.0083, 32.41, 0.6],
    [200, 0.0095, 34.48, -1.7],
    [250, 0.015, 34.75, -3.9],
    [315, 0.0289, 33.98, -6.1],
    [400, 0.044, 34.59, -8.2],
    [500, 0.0578, 34.27, -9.7],
    [630, 0.0653, 32.06, -10.8],
    [800, 0.0711, 28.3, -11.9],
    [1000, 0.0818, 25.01, -12.5],
    [1250, 0.0844, 23, -13.5],
    [1600, 0.0882, 20.15, -15.4],
    [2000, 0.0898, 17.32, -17.7],
    [2500, 0.0868, 13.18, -21.2],
    [3150, 0.0844, 11.55, -24.2],
    [4000, 0.0771, 9.33, -25.9],
    [5000, 0.0527, 5.31, -23.6],
    [6300, 0.0364, 2.59, -15.8],
    [8000, 0.0185, 1.13, -7.1],
  ] as const
).map(([middle, importance, speech, ear]) => ({ middle, importance, speech, ear }));

/**
 * Edges of a band, Hz: ten bands a decade without a gap. The middle's name is a rounded figure, 1.6 kHz
 * for 1585 Hz.
 *
 * @source IEC 61260-1, octave ratio 10^0.3
 */
export function bandEdges(middle: number): readonly [number, number] {
  const exact = Math.round(10 * Math.log10(middle)) / 10;
  return [10 ** (exact - 0.05), 10 ** (exact + 0.05)];
}

/** Place of the first band among bands of a tenth of a decade: 10 lg 160 is 22. */
const FIRST = Math.round(10 * Math.log10(160));

/** Spectrum level of speech with normal effort at a frequency: that of its band. dB, −Infinity outside. */
export function speechLevel(f: number): number {
  const i = Math.floor(10 * Math.log10(f) + 0.5) - FIRST;
  return speechBands[i]?.speech ?? Number.NEGATIVE_INFINITY;
}
