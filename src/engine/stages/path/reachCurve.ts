import type { Work } from '../../fields/stage.ts';
import { dbmOfWatts } from '../../quantity/power.ts';
import type { pathFields } from './fields.ts';
import { noisesOf } from './noises.ts';
import { type Arrival, reachDistances } from './reach.ts';
import type { PathSeen } from './seen.ts';
import { sUnits } from './sMeter.ts';
import type { Way } from './way.ts';

type Results = Work<typeof pathFields>['results'];

/** What arrives at a distance of the chart. */
export interface Along extends Arrival {
  /** m */
  readonly distance: number;
}

/** The same way over all distances of the chart where anything arrives. */
export function arrivals(way: Way): Along[] {
  const out: Along[] = [];
  for (const distance of reachDistances(way.end)) {
    const arrival = way.over(distance);
    if (arrival) out.push({ distance, ...arrival });
  }
  return out;
}

/** Levels over distance; null where nothing arrives anywhere. */
export function reachCurve(
  seen: PathSeen,
  power: number,
  points: readonly Along[],
): Results['reach'] {
  const noise = noisesOf(seen)?.there ?? null;
  if (points.length === 0) return null;
  const sent = dbmOfWatts(power) - seen.feedLoss - seen.farFeedLoss;
  const levels = points.map(({ loss, gains }) => sent + gains - loss);
  return {
    distance: Float64Array.from(points, (p) => p.distance),
    hops: Float64Array.from(points, (p) => p.hops),
    loss: Float64Array.from(points, (p) => p.loss),
    gains: Float64Array.from(points, (p) => p.gains),
    received: Float64Array.from(levels),
    sUnits: Float64Array.from(levels, sUnits),
    snr: Float64Array.from(noise === null ? [] : levels, (l) => l - (noise ?? 0)),
  };
}
