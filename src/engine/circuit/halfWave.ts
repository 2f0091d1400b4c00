/**
 * Half-wave network: every reactance equals the resistance at the working frequency, so that it
 * shows any load unchanged there (inverted in phase) and falls off above.
 *
 * @param resistance Ω
 * @param frequency Hz
 * @returns L of each section, H, and C of each capacitor at a section's end, F; where two sections
 *   meet the capacitors add up to 2C
 * Source: closed form, X = R.
 */
export function halfWave(resistance: number, frequency: number): { l: number; c: number } {
  const w = 2 * Math.PI * frequency;
  return { l: resistance / w, c: 1 / (w * resistance) };
}
