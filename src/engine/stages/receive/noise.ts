import { dbOfPowerRatio, powerRatioOfDb } from '../../quantity/decibel.ts';
import { dbmOfWatts } from '../../quantity/power.ts';

/** Boltzmann's constant, J/K: exact (SI brochure, 9th edition). */
export const BOLTZMANN = 1.380649e-23;
/** Reference temperature of noise figures, K. */
export const REFERENCE_TEMPERATURE = 290;
/** Signal over noise that makes (S+N)/N ten decibels, ratio. */
export const SIGNAL_FOR_TEN = 9;

/** Thermal noise power kT0·B at 290 K, dBm, in a bandwidth in Hz: −174 dBm in 1 Hz. */
export const thermalNoise = (bandwidth: number): number =>
  dbmOfWatts(BOLTZMANN * REFERENCE_TEMPERATURE * bandwidth);

/**
 * Noise from outside behind a lossy antenna and its line, over thermal noise: what they lose of the
 * noise, they put thermal noise in its place, fa·η/l + 1 − η/l.
 *
 * @param external noise figure at a lossless antenna, dB
 * @param line loss of the line, dB
 * @param efficiency of the antenna, 0 … 1
 * @return dB
 * Source: ITU-R P.372, noise figure of a receiving system; all parts at 290 K.
 */
export function behindLosses(external: number, line: number, efficiency: number): number {
  const left = efficiency * powerRatioOfDb(-line);
  return dbOfPowerRatio(powerRatioOfDb(external) * left + 1 - left);
}

/**
 * Loss before the receiver that still leaves 10 dB of noise rise: (fa − 1)/(9F).
 *
 * @return dB; null where there is none to spare
 */
export function spareLoss(external: number, noiseFigure: number): number | null {
  const spare = (powerRatioOfDb(external) - 1) / (9 * powerRatioOfDb(noiseFigure));
  return spare > 1 ? dbOfPowerRatio(spare) : null;
}
