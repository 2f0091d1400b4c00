/** Bandwidth of a ×1 probe whatever the oscilloscope can do, Hz. Common practice, no source. */
export const TIMES_ONE_BANDWIDTH = 6e6;

/**
 * How much of a sine's voltage is shown by an instrument with a single-pole roll-off, as a ratio.
 *
 * An uncompensated ×10 probe can read high; that is not in it.
 * Source: closed form of one pole, 1/√(1 + (f/f3)²); a −3 dB bandwidth is what makers state.
 *
 * @param frequency Hz
 * @param bandwidth −3 dB, Hz
 */
export function shownShare(frequency: number, bandwidth: number): number {
  return 1 / Math.sqrt(1 + (frequency / bandwidth) ** 2);
}
