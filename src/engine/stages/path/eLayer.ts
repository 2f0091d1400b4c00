/** Height at which the E layer turns a ray back, m. Source: ITU-R P.533. */
export const E_HEIGHT = 110_000;

/** What is left of the E layer's critical frequency at night, Hz. */
export const E_NIGHT = 0.5e6;

/**
 * Critical frequency of the E layer, Hz: 0.9·[(180 + 1.44·R12)·cos χ]^¼ MHz, and a remainder at
 * night. Steadier than the F2 layer: it keeps to this within some 5 % by day.
 *
 * @param sunspots twelve-month running mean R12
 * @param zenith angle of the sun, rad
 * Source: CCIR's simple form, from memory.
 */
export function eCritical(sunspots: number, zenith: number): number {
  const sun = (180 + 1.44 * sunspots) * Math.max(0, Math.cos(zenith));
  return Math.max(E_NIGHT, 0.9e6 * sun ** 0.25);
}
