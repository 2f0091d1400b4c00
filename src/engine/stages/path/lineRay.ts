import { freeSpaceLoss } from '../../waves/freeSpaceLoss.ts';
import type { Ground } from '../../waves/ground.ts';
import { type Reflection, reflection } from '../../waves/reflection.ts';
import { twoRayGain } from './twoRay.ts';

/** Two antennas in sight of one another. */
export interface Sight {
  /** Hz */
  readonly frequency: number;
  /** m, over the ground. */
  readonly height: number;
  readonly farHeight: number;
  /** What reflects, or null to leave the ground out. */
  readonly ground: Ground | null;
  readonly polarisation: 'horizontal' | 'vertical';
}

/** The ray over a distance in line of sight. */
export interface LineRay {
  /** m */
  readonly length: number;
  /** rad; null without the ground. */
  readonly grazing: number | null;
  readonly mirror: Reflection | null;
  /** dB over the direct ray alone; null without the ground. */
  readonly groundRay: number | null;
  /** dB */
  readonly loss: number;
}

/**
 * Loss in line of sight, alone or with the ray by way of the ground. The Earth is taken as flat.
 *
 * @param distance along the ground, m
 * @param sight the antennas and what lies between
 */
export function lineRay(distance: number, sight: Sight): LineRay {
  const { frequency, height, farHeight, ground, polarisation } = sight;
  const length = Math.hypot(distance, height - farHeight);
  const spreading = freeSpaceLoss(frequency, length);
  if (ground === null) {
    return { length, grazing: null, mirror: null, groundRay: null, loss: spreading };
  }
  const grazing = Math.atan((height + farHeight) / distance);
  const mirror = reflection(grazing, frequency, ground, polarisation);
  const groundRay = twoRayGain(distance, height, farHeight, frequency, mirror);
  return { length, grazing, mirror, groundRay, loss: spreading - groundRay };
}
