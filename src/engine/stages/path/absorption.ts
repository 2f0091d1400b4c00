/** Height at which the ray's slant through the absorbing D region is taken, m. */
export const ABSORBING_HEIGHT = 100_000;

const MHZ = 1e6;

/**
 * How strongly the sun ionises the D region: 1 at the sub-solar point with no sunspots, 0 at night.
 *
 * Source: CCIR Report 252-2, I = (1 + 0.0037 R12) cos^1.3(0.881 χ) (second-hand). The night's small
 * remainder and the winter anomaly of that text are left out.
 *
 * @param sunspots twelve-month running mean sunspot number R12, ≥ 0
 * @param zenith angle of the sun at the reflection point, rad, 0 to π
 */
export function absorptionIndex(sunspots: number, zenith: number): number {
  return (1 + 0.0037 * sunspots) * Math.max(0, Math.cos(0.881 * zenith)) ** 1.3;
}

/**
 * Loss in the D region for one hop, dB (positive), up and down together.
 *
 * Stops holding below about 2 MHz and where the ray turns within the absorbing region.
 * Source: CCIR Report 252-2, 677.2 I sec i / ((f + fH)^1.98 + 10.2), frequencies in MHz
 * (second-hand). The angle i is taken at 100 km.
 *
 * @param index from `absorptionIndex`
 * @param secant of the angle of incidence at 100 km
 * @param frequency Hz
 * @param gyro electron gyrofrequency, Hz (0.8–1.6 MHz over the Earth)
 */
export function absorption(index: number, secant: number, frequency: number, gyro: number): number {
  return (677.2 * index * secant) / (((frequency + gyro) / MHZ) ** 1.98 + 10.2);
}
