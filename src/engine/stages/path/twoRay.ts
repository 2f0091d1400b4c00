import { SPEED_OF_LIGHT } from '../../waves/freeSpaceLoss.ts';
import type { Reflection } from '../../waves/reflection.ts';

/**
 * What the ground-reflected ray adds to or takes from the direct one, dB over free space.
 * Between +6 dB and a deep null; falling as the square of distance when both antennas are low.
 *
 * Flat ground, isotropic antennas of one polarisation. Source: two-ray model, closed form.
 *
 * @param distance along the ground, m
 * @param own height, m
 * @param far height, m
 * @param frequency Hz
 * @param mirror reflection coefficient at the grazing angle
 */
export function twoRayGain(
  distance: number,
  own: number,
  far: number,
  frequency: number,
  mirror: Reflection,
): number {
  const direct = Math.hypot(distance, own - far);
  const bounced = Math.hypot(distance, own + far);
  // difference of the two lengths without cancellation
  const longer = (4 * own * far) / (direct + bounced);
  const lag = (2 * Math.PI * longer * frequency) / SPEED_OF_LIGHT;
  const second = (mirror.size * direct) / bounced;
  return 10 * Math.log10(1 + second * second + 2 * second * Math.cos(mirror.turn - lag));
}
