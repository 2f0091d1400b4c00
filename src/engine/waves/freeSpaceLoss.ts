/** Speed of light, m/s, exact (SI brochure, 9th edition). */
export const SPEED_OF_LIGHT = 299_792_458;

/**
 * Basic transmission loss between isotropic antennas in free space, in dB (positive).
 *
 * With f in MHz and d in km this is 32.4478 + 20 log f + 20 log d; the Recommendation prints 32.4.
 * Stops holding nearer than a wavelength or so, where the antennas' near fields overlap.
 * Source: ITU-R P.525, "Calculation of free-space attenuation", equation for Lbf.
 *
 * @param frequency Hz
 * @param length of the ray, m
 */
export function freeSpaceLoss(frequency: number, length: number): number {
  return 20 * Math.log10((4 * Math.PI * length * frequency) / SPEED_OF_LIGHT);
}
