import { grounds } from '../../data/grounds.ts';
import { format } from '../../quantity/format.ts';
import { freeSpaceLoss } from '../../waves/freeSpaceLoss.ts';
import { lineRay, type Sight } from './lineRay.ts';
import { radioHorizon } from './radioHorizon.ts';
import type { WaySeen } from './seen.ts';
import { bothGains, type Way } from './way.ts';

/** In line of sight, with the ground's ray or without. */
export function bySight(seen: WaySeen): Way {
  const { frequency, distance, height, farHeight, polarisation } = seen;
  const ground = seen.route === 'twoRay' ? grounds[seen.ground] : null;
  const sight: Sight = { frequency, height, farHeight, ground, polarisation };
  const horizon = radioHorizon(height, farHeight);
  const gains = bothGains(seen, 0);
  const over = (d: number) =>
    d <= horizon ? { hops: 0, loss: lineRay(d, sight).loss, gains } : null;
  if (distance > horizon) {
    return {
      part: { horizon },
      over,
      end: horizon,
      problems: [
        {
          field: 'path.distance',
          weight: 'stops',
          says: `${format(distance, 'm', 3)} lies beyond the radio horizon of ${format(horizon, 'm', 3)} from these heights.`,
          try: 'Higher antennas, a shorter distance, or the way by the F2 layer.',
        },
      ],
    };
  }
  const ray = lineRay(distance, sight);
  return {
    part: {
      horizon,
      length: ray.length,
      spreading: freeSpaceLoss(frequency, ray.length),
      loss: ray.loss,
      ...(ray.mirror
        ? {
            grazing: ray.grazing,
            mirrorSize: ray.mirror.size,
            mirrorTurn: ray.mirror.turn,
            groundRay: ray.groundRay,
          }
        : {}),
    },
    problems: [],
    over,
    end: horizon,
  };
}
