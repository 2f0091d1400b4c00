/** Level of S9 below 30 MHz, dBm at the receiver's input. */
export const S9_LEVEL = -73;
/** Width of one S-unit, dB. */
export const S_UNIT = 6;

/**
 * Level in S-units below 30 MHz, parts of a unit kept; above 9 the rest is given in dB by `overS9`.
 *
 * Source: IARU Region 1 Technical Recommendation R.1: S9 = −73 dBm, 6 dB per S-unit.
 *
 * @param level dBm at the receiver's input, available power in a matched input
 * @returns 0 to 9; under 1 there is nothing to read
 */
export function sUnits(level: number): number {
  return Math.min(9, Math.max(0, 9 + (level - S9_LEVEL) / S_UNIT));
}

/** dB over S9, 0 below it. @param level dBm */
export function overS9(level: number): number {
  return Math.max(0, level - S9_LEVEL);
}

/**
 * The report as it is spoken: the nearest whole S-unit, and above S9 the nearest five decibels over
 * it: "S7", "S9+20 dB"; "below S1" where no needle moves.
 *
 * @param level dBm
 */
export function sReport(level: number): string {
  const over = 5 * Math.round(overS9(level) / 5);
  if (over > 0) return `S9+${over} dB`;
  const units = Math.round(sUnits(level));
  return units < 1 ? 'below S1' : `S${units}`;
}
