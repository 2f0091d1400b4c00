import { grounds } from '../../data/grounds.ts';
import { noResults, type Problem, type Work } from '../../fields/stage.ts';
import { powerRatioOfDb } from '../../quantity/decibel.ts';
import { format } from '../../quantity/format.ts';
import { dbmOfWatts } from '../../quantity/power.ts';
import { freeSpaceLoss, SPEED_OF_LIGHT } from '../../waves/freeSpaceLoss.ts';
import { groundWave } from '../../waves/groundWave.ts';
import { absorptionIndex } from './absorption.ts';
import { E_HEIGHT, eCritical } from './eLayer.ts';
import { exposureDistance, exposureLimits } from './exposure.ts';
import { exposureAdvice } from './exposureAdvice.ts';
import { fieldStrength } from './fieldStrength.ts';
import { pathFields } from './fields.ts';
import { gainsAt } from './gains.ts';
import { hopReach } from './hop.ts';
import { lineRay, type Sight } from './lineRay.ts';
import { cause, verdict } from './pathWords.ts';
import { radioHorizon } from './radioHorizon.ts';
import { type Arrival, reachDistances } from './reach.ts';
import type { PathSeen } from './seen.ts';
import { skipDistance } from './skipDistance.ts';
import { type Sky, skyRay } from './skyRay.ts';
import { overS9, sReport, sUnits } from './sMeter.ts';
import { requiredDensity, speechGrade } from './speechGrade.ts';
import { declinations, sunZenith } from './sun.ts';
import { dayShare, typicalCritical } from './typicalCritical.ts';

type Results = Work<typeof pathFields>['results'];
type Part = Partial<Results>;

/** The greatest field enhancement to reckon with over ground. Source: FCC OET Bulletin 65. */
const GROUND_ENHANCEMENT = 1.6;
/** Up to this share of the MUF a path is open on nine days in ten (CCIR, from memory). */
const WORKING_SHARE = 0.85;

/** What is left of the signal at the other end, and whether speech gets through. */
export function workPath(seen: PathSeen): Work<typeof pathFields> {
  const problems: Problem[] = [];
  const power = seen.power ?? seen.pep;
  if (seen.power === null) {
    problems.push({
      field: 'plan.pep',
      weight: 'warns',
      says: 'Output has no answer yet: reckoned with the power wanted.',
    });
  }
  const way = wayOf(seen);
  problems.push(...way.problems);
  const { here, there } = gainsAt(seen, way.part.elevation ?? 0);
  const eirp = power * powerRatioOfDb(here - seen.feedLoss);
  const strongest = seen.antennaBest === null ? seen.gain : Math.max(seen.antennaBest, here);
  const results: Results = {
    ...noResults(pathFields),
    ...way.part,
    gainHere: here,
    gainThere: there,
    eirp,
    cause: cause(seen.route, seen.place, seen.spread),
    ...arriving(seen, eirp, there, way.part),
    ...exposed(seen.frequency, power * powerRatioOfDb(strongest - seen.feedLoss) * seen.duty),
    reach: reachCurve(seen, power, way),
  };
  if (results.snr === null && results.received !== null) problems.push(waitsForNoise(seen));
  const typical = seen.route === 'skyWave' && seen.layer === 'f2' && seen.foF2 === null;
  return {
    results,
    problems,
    origins: {
      critical: typical ? 'typical' : seen.layer === 'e' || seen.foF2 === null ? 'worked' : 'typed',
    },
  };
}

function wayOf(seen: PathSeen): Way {
  if (seen.route === 'skyWave') return bySky(seen);
  return seen.route === 'groundWave' ? byGround(seen) : bySight(seen);
}

interface Way {
  readonly part: Part;
  readonly problems: readonly Problem[];
  /** The same way over another distance; null where nothing arrives. */
  readonly over: (distance: number) => Arrival | null;
  /** End of the chart, m. */
  readonly end: number;
}

function bySky(seen: PathSeen): Way {
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
    problems: skyProblems(seen, ray, skip),
    over: (d) => {
      const { open, hops, loss, elevation } = skyRay(d, null, sky);
      return open ? { hops, loss, gains: together(seen, elevation) } : null;
    },
    end: Math.max(4e6, 1.25 * distance),
  };
}

function skyProblems(
  seen: PathSeen,
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

function bySight(seen: PathSeen): Way {
  const { frequency, distance, height, farHeight, polarisation } = seen;
  const ground = seen.route === 'twoRay' ? grounds[seen.ground] : null;
  const sight: Sight = { frequency, height, farHeight, ground, polarisation };
  const horizon = radioHorizon(height, farHeight);
  const gains = together(seen, 0);
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

/** Twice the field of free space over perfect ground, and half of it heard there again, dB. */
export const BOTH_ON_GROUND = 20 * Math.log10(2);

/** Farthest that a ground wave is drawn, m. */
const GROUND_END = 1e6;

/** Along the ground, both antennas standing on it. */
function byGround(seen: PathSeen): Way {
  const { frequency, distance } = seen;
  const wave = groundWave(frequency, grounds[seen.ground]);
  const lossOver = (d: number): number => freeSpaceLoss(frequency, d) + BOTH_ON_GROUND + wave(d);
  const gains = together(seen, 0);
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

function levelWire(seen: PathSeen): Problem[] {
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

const together = (seen: PathSeen, elevation: number): number => {
  const { here, there } = gainsAt(seen, elevation);
  return here + there;
};

/** From the path loss to the other operator's ear. */
function arriving(
  seen: PathSeen,
  eirp: number,
  gain: number,
  { loss, length, spreading, surface }: Part,
): Part {
  if (loss == null || length == null || spreading == null) return {};
  const received = dbmOfWatts(eirp) - loss + gain - seen.farFeedLoss;
  const free = 20 * Math.log10(fieldStrength(eirp, length) / 1e-6);
  const part: Part = {
    received,
    // Along the ground the antennas' gains hold the doubling of the field already.
    field: free - (surface ?? loss - spreading),
    sUnits: sUnits(received),
    overS9: overS9(received),
    report: sReport(received),
  };
  const noise = noiseLevel(seen);
  if (noise === null || seen.bandwidth === null) return part;
  return { ...part, noise, ...understood(seen, received - noise, seen.bandwidth) };
}

/** Band noise behind the feed line, and the receiver's own, dBm; null until Receive knows. */
function noiseLevel({ bandNoise, floor, farFeedLoss }: PathSeen): number | null {
  if (bandNoise === null || floor === null) return null;
  return 10 * Math.log10(powerRatioOfDb(bandNoise - farFeedLoss) + powerRatioOfDb(floor));
}

function understood(seen: PathSeen, snr: number, bandwidth: number): Part {
  const { spread } = seen;
  const required = requiredDensity[seen.route === 'skyWave' ? 'fading' : 'stable'];
  const density = snr + 10 * Math.log10(bandwidth);
  const speech = speechGrade(density, required);
  const speechLow = speechGrade(density - spread, required);
  const speechHigh = speechGrade(density + spread, required);
  return {
    snr,
    snrLow: snr - spread,
    snrHigh: snr + spread,
    density,
    grades: (['justUsable', 'marginal', 'good'] as const).map((grade) => ({
      grade,
      needed: required[grade],
      spare: density - required[grade],
    })),
    speech,
    speechLow,
    speechHigh,
    verdict: verdict(speechLow, speech, speechHigh),
  };
}

function waitsForNoise(seen: PathSeen): Problem {
  const at = seen.bandwidth === null ? 'filter.noiseBandwidth' : 'receive.floor';
  return {
    field: at,
    weight: 'stops',
    says: `Signal over noise waits for ${seen.bandwidth === null ? 'Filter' : 'Receive'}.`,
  };
}

function exposed(frequency: number, meanEirp: number): Part {
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

/** The same way over distance; null where nothing arrives anywhere. */
function reachCurve(seen: PathSeen, power: number, way: Way): Results['reach'] {
  const noise = noiseLevel(seen);
  const points = [...reachDistances(way.end)].flatMap((distance) => {
    const arrival = way.over(distance);
    return arrival ? [{ distance, ...arrival }] : [];
  });
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
