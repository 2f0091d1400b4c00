import { freeSpaceLoss } from '../../waves/freeSpaceLoss.ts';
import { ABSORBING_HEIGHT, absorption } from './absorption.ts';
import { hop, hopReach, incidenceSecant } from './hop.ts';

/** Loss of one reflection at the ground between hops, dB. Source: ITU-R P.533 (second-hand). */
export const TOUCHDOWN_LOSS = 2;

/** The ionosphere half-way, and the frequency sent through it. */
export interface Sky {
  /** Hz */
  readonly frequency: number;
  /** Virtual height, m. */
  readonly height: number;
  /** Critical frequency, Hz. */
  readonly critical: number;
  /** Lowest useful elevation, rad. */
  readonly lowest: number;
  /** Absorption index. */
  readonly index: number;
  /** Gyrofrequency, Hz. */
  readonly gyro: number;
}

/** A ray by way of the layer. */
export interface SkyRay {
  readonly hops: number;
  /** m, along the ground. */
  readonly hopDistance: number;
  /** rad; below zero the Earth is in the way. */
  readonly elevation: number;
  readonly secant: number;
  /** m, all hops. */
  readonly length: number;
  /** Hz, highest that this ray's slant returns. */
  readonly muf: number;
  /** dB, all hops. */
  readonly absorption: number;
  /** dB */
  readonly groundLoss: number;
  /** dB, everything. */
  readonly loss: number;
  /** Is there such a ray at all? */
  readonly open: boolean;
}

/**
 * The ray over a distance by one or more equal hops.
 *
 * The same layer is taken at every hop. Fading, focusing and polarisation loss are left out.
 *
 * @param distance along the ground, m
 * @param hops wanted, or null for the fewest that the lowest elevation allows
 * @param sky the ionosphere
 */
export function skyRay(distance: number, hops: number | null, sky: Sky): SkyRay {
  const { frequency, height, critical, lowest, index, gyro } = sky;
  const count = hops ?? Math.max(1, Math.ceil(distance / hopReach(lowest, height)));
  const one = hop(distance / count, height);
  const through = incidenceSecant(one.elevation, ABSORBING_HEIGHT);
  const absorbed = count * absorption(index, through, frequency, gyro);
  const groundLoss = TOUCHDOWN_LOSS * (count - 1);
  const length = count * one.slant;
  const muf = critical * one.secant;
  return {
    hops: count,
    hopDistance: distance / count,
    elevation: one.elevation,
    secant: one.secant,
    length,
    muf,
    absorption: absorbed,
    groundLoss,
    loss: freeSpaceLoss(frequency, length) + absorbed + groundLoss,
    open: one.elevation >= 0 && frequency <= muf,
  };
}
