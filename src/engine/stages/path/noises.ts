import { noiseFromOutside } from '../../data/noiseClasses.ts';
import { powerRatioOfDb } from '../../quantity/decibel.ts';
import type { PathSeen } from './seen.ts';

/** Noise at both ends. */
export interface Noises {
  /** External noise figure at the other station's place, dB over kT0B. */
  readonly farExternal: number;
  /** What its antenna would bring without any loss, dBm. */
  readonly farBand: number;
  /** At its receiver's input, dBm. */
  readonly there: number;
  /** At the receiver's input here, dBm. */
  readonly here: number;
}

/** Noise at both ends; null until Receive knows. Both have this receiver. */
export function noisesOf(seen: PathSeen): Noises | null {
  const { external, bandNoise, floor } = seen;
  if (external === null || bandNoise === null || floor === null) return null;
  const farExternal = externalThere(seen) ?? external;
  const farBand = bandNoise + (farExternal - external);
  const lost = antennaLoss(seen);
  return {
    farExternal,
    farBand,
    there: both(farBand - seen.farFeedLoss - (seen.antennaFar === 'same' ? lost : 0), floor),
    here: both(bandNoise - seen.feedLoss - lost, floor),
  };
}

/** External noise figure at the other place, dB; null where it is the same as here. */
function externalThere(seen: PathSeen): number | null {
  const { farPlace, place, atmospheric, farAtmospheric, frequency } = seen;
  if (farPlace === 'same' && farAtmospheric === null) return null;
  const there = farPlace === 'same' ? place : farPlace;
  return there === null ? null : noiseFromOutside(there, farAtmospheric ?? atmospheric, frequency);
}

/** What the antenna itself loses of signal and noise alike, dB; none where only its gain is known. */
export const antennaLoss = ({ antennaEfficiency }: Pick<PathSeen, 'antennaEfficiency'>): number =>
  antennaEfficiency === null ? 0 : -10 * Math.log10(antennaEfficiency);

/** Powers of two independent noises together, dBm. */
const both = (a: number, b: number): number =>
  10 * Math.log10(powerRatioOfDb(a) + powerRatioOfDb(b));
