import { grounds } from '../../data/grounds.ts';
import { antennaGain } from '../../waves/antennaGain.ts';
import type { WaySeen } from './seen.ts';

/** Gains of both antennas towards a ray, dBi. */
export interface Gains {
  readonly here: number;
  readonly there: number;
}

/**
 * Gains towards a ray: as typed, or as the antenna makes them; the other station's the same where
 * it has the same antenna.
 *
 * @param elevation rad; read by way of the layer only
 */
export function gainsAt(seen: WaySeen, elevation: number): Gains {
  const here = ownGain(seen, elevation);
  return { here, there: seen.antennaFar === 'same' ? here : seen.farGain };
}

function ownGain(seen: WaySeen, elevation: number): number {
  const { antennaMade, antennaAlong, antennaFree, route } = seen;
  if (antennaMade === null || antennaAlong === null || antennaFree === null) return seen.gain;
  if (route === 'skyWave') {
    // At the horizon itself nothing is left of any antenna over real ground.
    const over = Math.max(LEAST, elevation);
    return antennaGain(antennaMade, over, seen.frequency, grounds[seen.ground]);
  }
  return route === 'groundWave' ? antennaAlong : antennaFree;
}

/** Lowest elevation at which a gain is worked out, rad: a tenth of a degree. */
export const LEAST = Math.PI / 1800;
