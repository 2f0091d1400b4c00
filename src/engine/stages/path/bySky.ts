import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import { freeSpaceLoss } from '../../waves/freeSpaceLoss.ts';
import { absorptionIndex } from './absorption.ts';
import { E_HEIGHT, eCritical } from './eLayer.ts';
import { hopReach, incidenceSecant } from './hop.ts';
import type { WaySeen } from './seen.ts';
import { skipDistance } from './skipDistance.ts';
import { type Sky, skyRay } from './skyRay.ts';
import { declinations, sunZenith } from './sun.ts';
import { dayShare, typicalCritical } from './typicalCritical.ts';
import { bothGains, type Part, type Way } from './way.ts';

/** Up to this share of the MUF a path is open on nine days in ten (CCIR, from memory). */
const WORKING_SHARE = 0.85;

/** By the ionosphere. */
export function bySky(seen: WaySeen): Way {
  const { frequency, distance, lowest } = seen;
  const byE = seen.layer === 'e';
  const height = byE ? E_HEIGHT : seen.layerHeight;
  const hourAngle = ((seen.hour - 43_200) / 86_400) * 2 * Math.PI;
  const zenith = sunZenith(seen.latitude, declinations[seen.season], hourAngle);
  const share = dayShare(zenith);
  const critical = byE
    ? eCritical(seen.sunspots, zenith)
    : (seen.foF2 ?? typicalCritical(seen.season, seen.sunspots, share));
  const index = absorptionIndex(seen.sunspots, zenith);
  const sky: Sky = { frequency, height, critical, lowest, index, gyro: seen.gyro };
  const ray = skyRay(distance, seen.hops, sky);
  const skip = skipDistance(frequency, critical, height);
  const mufShare = frequency / ray.muf;
  const opening = mufShare <= WORKING_SHARE ? 'holds' : mufShare <= 1 ? 'close' : 'fails';
  const hidden = ray.elevation < 0;
  const part: Part = {
    mirror: height,
    hopCount: ray.hops,
    hopDistance: ray.hopDistance,
    longestHop: hopReach(0, height),
    usableHop: hopReach(lowest, height),
    elevation: ray.elevation,
    zenith,
    dayShare: share,
    critical,
    skip,
    index,
    ...(hidden ? {} : { secant: ray.secant, muf: ray.muf, mufShare, opening }),
    ...(ray.open
      ? {
          absorption: ray.absorption,
          groundLoss: ray.groundLoss,
          length: ray.length,
          spreading: freeSpaceLoss(frequency, ray.length),
          loss: ray.loss,
        }
      : {}),
  };
  return {
    part,
    problems: [...skyProblems(seen, ray, skip), ...screened(seen, ray, zenith)],
    over: (d) => {
      const { open, hops, loss, elevation } = skyRay(d, null, sky);
      return open ? { hops, loss, gains: bothGains(seen, elevation) } : null;
    },
    end: Math.max(4e6, 1.25 * distance),
  };
}

/** By day the E layer may return a ray before it comes to the F2 layer. */
function screened(
  { layer, frequency, sunspots }: WaySeen,
  { elevation, open }: { elevation: number; open: boolean },
  zenith: number,
): Problem[] {
  if (layer === 'e' || !open) return [];
  const most = eCritical(sunspots, zenith) * incidenceSecant(elevation, E_HEIGHT);
  if (frequency >= most) return [];
  return [
    {
      field: 'path.layer',
      weight: 'warns',
      says: `At this hour the E layer returns so flat a ray up to ${format(most, 'Hz', 3)}: it does not come to the F2 layer.`,
      try: 'The E layer, or more hops, which leave more steeply. The Day leaf takes whichever brings most.',
    },
  ];
}

function skyProblems(
  seen: WaySeen,
  ray: { elevation: number; hops: number; muf: number; hopDistance: number },
  skip: number | null,
): Problem[] {
  const mhz = (f: number) => format(f, 'Hz', 3);
  // Is the Earth in the way?
  if (ray.elevation < 0) {
    return [
      {
        field: 'path.hops',
        weight: 'stops',
        says: `A hop of ${format(ray.hopDistance, 'm', 4)} is too long: at this height the longest is ${format(hopReach(0, seen.layer === 'e' ? E_HEIGHT : seen.layerHeight), 'm', 4)}.`,
        try: 'More hops, or leave the field blank.',
      },
    ];
  }
  // Does the layer let it through?
  if (seen.frequency > ray.muf) {
    const nearest =
      skip === null
        ? 'Even the flattest ray goes through: a lower band or another hour.'
        : `Nothing nearer than ${format(skip, 'm', 3)} is reached: farther away, a lower band, or another hour.`;
    return [
      {
        field: 'path.distance',
        weight: 'stops',
        says: `The layer returns at most ${mhz(ray.muf)} at this slant; ${mhz(seen.frequency)} goes through.`,
        try: nearest,
      },
    ];
  }
  if (seen.frequency > WORKING_SHARE * ray.muf) {
    return [
      {
        field: 'path.distance',
        weight: 'warns',
        says: `${mhz(seen.frequency)} is near the highest frequency returned, ${mhz(ray.muf)}: the path is open on some days only.`,
        try: 'A lower band, or another hour.',
      },
    ];
  }
  return [];
}
