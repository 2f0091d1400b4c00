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
 * Rise of the noise when the antenna takes the place of a resistor at 290 K:
 * (fa + F − 1)/F.
 *
 * @param external external noise figure, dB
 * @param noiseFigure of the receiver, dB
 * @return dB; negative where the antenna is quieter than a resistor
 */
export function noiseRise(external: number, noiseFigure: number): number {
  const f = powerRatioOfDb(noiseFigure);
  return dbOfPowerRatio((powerRatioOfDb(external) + f - 1) / f);
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
