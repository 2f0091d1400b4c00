import { dbOfPowerRatio, powerRatioOfDb } from '../quantity/decibel.ts';

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
