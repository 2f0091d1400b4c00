/**
 * How far below the intercept a strong signal lies that takes a decibel off a weak one beside it,
 * by the cubic alone: 1 − 2·B²/A² = 10^(−1/20), so 12.65 dB. Source: Taylor series of an amplifier,
 * any text on receivers.
 */
export const BLOCKS_BELOW = -10 * Math.log10((1 - 10 ** (-1 / 20)) / 2);

/** Level of the product 2f1 − f2 of two equal tones, dBm: three times the tones less twice the intercept. */
export const thirdProduct = (tone: number, intercept: number): number => 3 * tone - 2 * intercept;

/** Level of two tones whose product is as strong as the noise, dBm. */
export const harmlessTone = (intercept: number, noise: number): number =>
  (2 * intercept + noise) / 3;
