import type { LosslessArm } from './crystalFromShift.ts';

/**
 * Motional arm from series and parallel resonance: C_m = C((fp/fs)² − 1). Loss left out.
 *
 * @param fs Hz
 * @param fp Hz
 * @param shunt all that lay across the motional arm when fp was read, F
 * @return null where fp does not lie above fs
 * Source: closed form of the equivalent circuit, IEC 60122-1.
 */
export function crystalFromPair(fs: number, fp: number, shunt: number): LosslessArm | null {
  const cm = (shunt * (fp - fs) * (fp + fs)) / (fs * fs);
  return cm > 0 ? { fs, lm: 1 / ((2 * Math.PI * fs) ** 2 * cm), cm } : null;
}

/** The first-order shortcut: C_m = 2C(fp − fs)/fs. */
export function crystalFromPairShort(fs: number, fp: number, shunt: number): LosslessArm | null {
  const cm = (2 * shunt * (fp - fs)) / fs;
  return cm > 0 ? { fs, lm: 1 / ((2 * Math.PI * fs) ** 2 * cm), cm } : null;
}
