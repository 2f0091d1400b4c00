import { grounds } from '../../data/grounds.ts';
import { dbmOfWatts } from '../../quantity/power.ts';
import { absorptionIndex } from '../../stages/path/absorption.ts';
import { BOTH_ON_GROUND, GROUND_END } from '../../stages/path/byGround.ts';
import { E_HEIGHT, eCritical } from '../../stages/path/eLayer.ts';
import { gainsAt } from '../../stages/path/gains.ts';
import { incidenceSecant } from '../../stages/path/hop.ts';
import { noisesOf } from '../../stages/path/noises.ts';
import type { PathSeen } from '../../stages/path/seen.ts';
import { type Sky, skyRay } from '../../stages/path/skyRay.ts';
import { requiredDensity, speechGrade } from '../../stages/path/speechGrade.ts';
import { declinations, sunZenith } from '../../stages/path/sun.ts';
import { dayShare, typicalCritical } from '../../stages/path/typicalCritical.ts';
import { freeSpaceLoss } from '../../waves/freeSpaceLoss.ts';
import { groundWave } from '../../waves/groundWave.ts';
import { type CellTerm, cellTerms, type DayAnswer, grades } from './dayAnswer.ts';

const HOURS = 24;
/** Ten for each tenfold: each a quarter farther than the one before. */
const DISTANCES = 28;

/** First distance of the map, and its last at the least, m. */
const NEAREST = 20e3;
const FARTHEST = 10e6;

/** Most hops that are tried. */
const HOPS = 4;

const how =
  'For every hour and distance: one to four hops by the E and the F2 layer where they are open and no lower layer stands in the way, and the wave along the ground; the strongest counts. The same layer and sun are taken along the whole way.';

/** Works a day, an hour at a time; yields the share done. */
export function* dayWork(seen: PathSeen): Generator<number, DayAnswer, void> {
  const distances = Float64Array.from(
    { length: DISTANCES },
    (_, i) => NEAREST * (FARTHEST / NEAREST) ** (i / (DISTANCES - 1)),
  );
  const hours = Float64Array.from({ length: HOURS }, (_, i) => i * 3600);
  const size = HOURS * DISTANCES;
  const received = new Float64Array(size).fill(Number.NEGATIVE_INFINITY);
  const way = new Uint8Array(size);
  const hops = new Uint8Array(size);
  const terms = termsOf(size);
  const power = dbmOfWatts(seen.power ?? seen.pep);
  const sent = power - seen.feedLoss - seen.farFeedLoss;
  const ground = alongGround(seen, distances);
  const [plannedGround = null] = alongGround(seen, Float64Array.of(seen.distance));
  const plannedLevels = new Float64Array(HOURS).fill(Number.NEGATIVE_INFINITY);
  const plannedWays = new Uint8Array(HOURS);
  for (let h = 0; h < HOURS; h += 1) {
    const skies = skiesAt(seen, hours[h] ?? 0);
    for (let d = 0; d < DISTANCES; d += 1) {
      const at = h * DISTANCES + d;
      const best = strongest(seen, distances[d] ?? 0, skies, ground[d] ?? null);
      if (best === null) continue;
      received[at] = sent + best.level;
      way[at] = best.way;
      hops[at] = best.hops;
      for (const term of cellTerms) terms[term][at] = best.terms[term];
    }
    const there = strongest(seen, seen.distance, skies, plannedGround);
    plannedLevels[h] = there === null ? Number.NEGATIVE_INFINITY : sent + there.level;
    plannedWays[h] = there?.way ?? 0;
    yield (h + 1) / HOURS;
  }
  const noise = noisesOf(seen)?.there ?? null;
  const { snr, grade } = understood(seen.bandwidth, noise, received, way);
  const ends = { power, lineHere: seen.feedLoss, lineThere: seen.farFeedLoss, noise };
  const open = understood(seen.bandwidth, noise, plannedLevels, plannedWays).grade;
  const hoursOpen = open.reduce((count, one) => count + (one > 0 ? 1 : 0), 0);
  return { hours, distances, received, snr, grade, way, hops, terms, ends, hoursOpen, how };
}

interface Skies {
  readonly e: Sky;
  readonly f2: Sky;
}

/** Both layers at an hour, s. */
function skiesAt(seen: PathSeen, hour: number): Skies {
  const hourAngle = ((hour - 43_200) / 86_400) * 2 * Math.PI;
  const zenith = sunZenith(seen.latitude, declinations[seen.season], hourAngle);
  const index = absorptionIndex(seen.sunspots, zenith);
  const common = { frequency: seen.frequency, lowest: seen.lowest, index, gyro: seen.gyro };
  return {
    e: { ...common, height: E_HEIGHT, critical: eCritical(seen.sunspots, zenith) },
    f2: {
      ...common,
      height: seen.layerHeight,
      critical: seen.foF2 ?? typicalCritical(seen.season, seen.sunspots, dayShare(zenith)),
    },
  };
}

interface Best {
  /** Gains less loss, dB. */
  readonly level: number;
  readonly way: number;
  readonly hops: number;
  readonly terms: Readonly<Record<CellTerm, number>>;
}

/** Room for what each cell's sum is made of. */
const termsOf = (size: number) =>
  Object.fromEntries(cellTerms.map((term) => [term, new Float64Array(size)])) as Record<
    CellTerm,
    Float64Array
  >;

/** The way that brings most over a distance; null where none does. */
function strongest(
  seen: PathSeen,
  distance: number,
  { e, f2 }: Skies,
  ground: Best | null,
): Best | null {
  let best = ground;
  for (let hops = 1; hops <= HOPS; hops += 1) {
    for (const [way, sky] of [
      [2, e],
      [3, f2],
    ] as const) {
      const ray = skyRay(distance, hops, sky);
      if (!ray.open || ray.elevation < seen.lowest) continue;
      if (way === 3 && screened(seen.frequency, ray.elevation, e.critical)) continue;
      const { here, there } = gainsAt({ ...seen, route: 'skyWave' }, ray.elevation);
      const level = here + there - ray.loss;
      if (best !== null && level <= best.level) continue;
      const { elevation, absorption, groundLoss: touching } = ray;
      const spreading = freeSpaceLoss(seen.frequency, ray.length);
      const terms = { here, there, elevation, spreading, absorption, touching, surface: 0 };
      best = { level, way, hops, terms };
    }
  }
  return best;
}

/** Does the E layer turn the ray back before it comes to the F2 layer? */
const screened = (frequency: number, elevation: number, critical: number): boolean =>
  frequency < critical * incidenceSecant(elevation, E_HEIGHT);

/** The wave along the ground; null where the antennas don't send there or it is too far. */
function alongGround(seen: PathSeen, distances: Float64Array): readonly (Best | null)[] {
  if (seen.antennaMade === null) return [...distances].map(() => null);
  const wave = groundWave(seen.frequency, grounds[seen.ground]);
  const { here, there } = gainsAt({ ...seen, route: 'groundWave' }, 0);
  return [...distances].map((d) => {
    if (d > GROUND_END) return null;
    const spreading = freeSpaceLoss(seen.frequency, d);
    const surface = wave(d);
    return {
      level: here + there - spreading - BOTH_ON_GROUND - surface,
      way: 1,
      hops: 0,
      terms: { here, there, elevation: 0, spreading, absorption: 0, touching: 0, surface },
    };
  });
}

function understood(
  bandwidth: number | null,
  noise: number | null,
  received: Float64Array,
  way: Uint8Array,
) {
  const grade = new Uint8Array(received.length);
  if (noise === null || bandwidth === null) {
    return { snr: new Float64Array(0), grade };
  }
  const snr = received.map((level) => level - noise);
  snr.forEach((ratio, i) => {
    const density = ratio + 10 * Math.log10(bandwidth);
    const required = requiredDensity[(way[i] ?? 0) === 1 ? 'stable' : 'fading'];
    grade[i] = grades.indexOf(speechGrade(density, required));
  });
  return { snr, grade };
}
