/**
 * Size of a transistor's current gain at a frequency: hFE/√(1 + (hFE·f/fT)²).
 *
 * @param hfe current gain for direct current, 1
 * @param ft transition frequency, Hz
 * @param frequency Hz
 */
export function currentGain(hfe: number, ft: number, frequency: number): number {
  return hfe / Math.hypot(1, (hfe * frequency) / ft);
}
