import { SPEED_OF_LIGHT } from '../../waves/freeSpaceLoss.ts';
import { exposureDistance, exposureLimits } from './exposure.ts';
import { exposureAdvice } from './exposureAdvice.ts';
import type { Part } from './way.ts';

/** The greatest field enhancement to reckon with over ground. Source: FCC OET Bulletin 65. */
const GROUND_ENHANCEMENT = 1.6;

/**
 * How near to the antenna people may come.
 *
 * @param meanEirp W, in the antenna's strongest direction
 */
export function exposed(frequency: number, meanEirp: number): Part {
  const publicLimit = exposureLimits.public.field(frequency);
  const occupationalLimit = exposureLimits.occupational.field(frequency);
  const icnirpLimit = exposureLimits.icnirp.field(frequency);
  const publicDistance = exposureDistance(meanEirp, publicLimit);
  const icnirpDistance = exposureDistance(meanEirp, icnirpLimit);
  // Rounded up to the next decimetre: a distance to keep is never rounded down.
  const keepAway =
    Math.ceil((GROUND_ENHANCEMENT * Math.max(publicDistance, icnirpDistance)) / 0.1) * 0.1;
  const nearField = SPEED_OF_LIGHT / (2 * Math.PI * frequency);
  return {
    meanEirp,
    publicLimit,
    publicDistance,
    occupationalLimit,
    occupationalDistance: exposureDistance(meanEirp, occupationalLimit),
    icnirpLimit,
    icnirpDistance,
    keepAway,
    nearField,
    exposureAdvice: exposureAdvice(keepAway, nearField),
  };
}
