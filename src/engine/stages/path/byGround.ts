import { grounds } from '../../data/grounds.ts';
import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import { freeSpaceLoss } from '../../waves/freeSpaceLoss.ts';
import { groundWave } from '../../waves/groundWave.ts';
import type { WaySeen } from './seen.ts';
import { bothGains, type Way } from './way.ts';

/** Twice the field of free space over perfect ground, and half of it heard there again, dB. */
export const BOTH_ON_GROUND = 20 * Math.log10(2);

/** Farthest that a ground wave is drawn, m. */
export const GROUND_END = 1e6;

/** Along the ground, both antennas standing on it. */
export function byGround(seen: WaySeen): Way {
  const { frequency, distance } = seen;
  const wave = groundWave(frequency, grounds[seen.ground]);
  const lossOver = (d: number): number => freeSpaceLoss(frequency, d) + BOTH_ON_GROUND + wave(d);
  const gains = bothGains(seen, 0);
  const far = distance > GROUND_END;
  return {
    part: far
      ? {}
      : {
          surface: wave(distance),
          length: distance,
          spreading: freeSpaceLoss(frequency, distance),
          loss: lossOver(distance),
        },
    problems: far
      ? [
          {
            field: 'path.distance',
            weight: 'stops',
            says: `Along the ground nothing is left after ${format(distance, 'm', 3)}.`,
            try: `Up to ${format(GROUND_END, 'm', 3)} is reckoned with; beyond, the way by the F2 layer.`,
          },
        ]
      : levelWire(seen),
    over: (d) => ({ hops: 0, loss: lossOver(d), gains }),
    end: Math.min(GROUND_END, Math.max(100e3, 1.25 * distance)),
  };
}

function levelWire(seen: WaySeen): Problem[] {
  if (seen.antennaMade?.kind !== 'horizontal') return [];
  return [
    {
      field: 'antenna.kind',
      weight: 'warns',
      says: 'A level wire sends next to nothing along the ground: its field lies flat there and is shorted.',
      try: 'A vertical, at both ends.',
    },
  ];
}
