import { rememberBut } from '../../fields/remember.ts';
import { noResults, type Problem, type Work } from '../../fields/stage.ts';
import { powerRatioOfDb } from '../../quantity/decibel.ts';
import { dbmOfWatts } from '../../quantity/power.ts';
import { BOTH_ON_GROUND, byGround } from './byGround.ts';
import { bySight } from './bySight.ts';
import { bySky } from './bySky.ts';
import { exposed } from './exposed.ts';
import { fieldStrength } from './fieldStrength.ts';
import { pathFields } from './fields.ts';
import { type Gains, gainsAt } from './gains.ts';
import { heardOf } from './heard.ts';
import { noisesOf } from './noises.ts';
import { cause } from './pathWords.ts';
import { type Along, arrivals, reachCurve } from './reachCurve.ts';
import { besideWay, type PathSeen, type WaySeen } from './seen.ts';
import { overS9, sReport, sUnits } from './sMeter.ts';
import { itemsBack, itemsOf, sumRows } from './sumRows.ts';
import { understood } from './understood.ts';
import type { Part, Way } from './way.ts';

type Results = Work<typeof pathFields>['results'];

/** What is left of the signal at the other end, and whether speech gets through. */
export function workPath(seen: PathSeen): Work<typeof pathFields> {
  const power = seen.power ?? seen.pep;
  const { way, along } = wayAlong(seen);
  const gains = gainsAt(seen, way.part.elevation ?? 0);
  const atAntenna = power * powerRatioOfDb(-seen.feedLoss);
  const strongest = seen.antennaBest === null ? seen.gain : Math.max(seen.antennaBest, gains.here);
  const results: Results = {
    ...noResults(pathFields),
    ...way.part,
    gainHere: gains.here,
    gainThere: gains.there,
    lineHere: seen.feedLoss,
    lineThere: seen.farFeedLoss,
    atAntenna,
    eirp: power * powerRatioOfDb(gains.here - seen.feedLoss),
    cause: cause(seen.route, placeThere(seen), seen.spread),
    ...arriving(seen, power, gains, way.part),
    ...exposed(seen.frequency, power * powerRatioOfDb(strongest - seen.feedLoss) * seen.duty),
    reach: reachCurve(seen, power, along),
  };
  const typical = seen.route === 'skyWave' && seen.layer === 'f2' && seen.foF2 === null;
  return {
    results,
    problems: [
      ...(seen.power === null ? [noOutput] : []),
      ...way.problems,
      ...waits(seen, results),
    ],
    origins: {
      critical: typical ? 'typical' : seen.layer === 'e' || seen.foF2 === null ? 'worked' : 'typed',
    },
  };
}

const noOutput: Problem = {
  field: 'plan.pep',
  weight: 'warns',
  says: 'Output has no answer yet: reckoned with the power wanted.',
};

/** The way, and what arrives by it at each distance of the chart. */
const wayAlong = rememberBut<
  PathSeen,
  (typeof besideWay)[number],
  { readonly way: Way; readonly along: readonly Along[] }
>(besideWay, (seen) => {
  const way = wayOf(seen);
  return { way, along: arrivals(way) };
});

function wayOf(seen: WaySeen): Way {
  if (seen.route === 'skyWave') return bySky(seen);
  return seen.route === 'groundWave' ? byGround(seen) : bySight(seen);
}

/** Noise class at the other end. */
const placeThere = ({ farPlace, place }: PathSeen) => (farPlace === 'same' ? place : farPlace);

/** From the path loss to the ear of either operator. */
function arriving(seen: PathSeen, power: number, gains: Gains, part: Part): Part {
  const noises = noisesOf(seen);
  const known: Part =
    noises === null
      ? {}
      : {
          farExternal: noises.farExternal,
          farBand: noises.farBand,
          noise: noises.there,
          heardNoise: noises.here,
        };
  const { loss, length, spreading, surface } = part;
  if (loss == null || length == null || spreading == null) return known;
  const eirp = power * powerRatioOfDb(gains.here - seen.feedLoss);
  const received = dbmOfWatts(eirp) - loss + gains.there - seen.farFeedLoss;
  const free = 20 * Math.log10(fieldStrength(eirp, length) / 1e-6);
  const noise = noises?.there ?? null;
  const snr = noise === null ? null : received - noise;
  const adds = addsOf(seen, power, gains, part);
  return {
    ...known,
    received,
    // Along the ground the antennas' gains hold the doubling of the field already.
    field: free - (surface ?? loss - spreading),
    sUnits: sUnits(received),
    overS9: overS9(received),
    report: sReport(received),
    ...(noise === null || snr === null || seen.bandwidth === null
      ? {}
      : understood(seen, snr, seen.bandwidth)),
    ...heardOf(seen, gains, loss, noises?.here ?? null, snr),
    sum: sumRows(itemsOf(seen.route), adds, 'noise', noise),
    back: sumRows(itemsBack(seen.route), adds, 'heardNoise', noises?.here ?? null),
  };
}

/** What each line of the sum adds, dB. */
function addsOf(seen: PathSeen, power: number, gains: Gains, part: Part) {
  const less = (value: number | null | undefined) => 0 - (value ?? 0);
  return {
    power: dbmOfWatts(power),
    farPower: dbmOfWatts(seen.farPower),
    lineHere: less(seen.feedLoss),
    antennaHere: gains.here,
    spreading: less(part.spreading),
    absorption: less(part.absorption),
    touching: less(part.groundLoss),
    groundRay: part.groundRay ?? 0,
    doubling: -BOTH_ON_GROUND,
    surface: less(part.surface),
    antennaThere: gains.there,
    lineThere: less(seen.farFeedLoss),
  };
}

/** What signal over noise still waits for. */
function waits(seen: PathSeen, { snr, received }: Results): Problem[] {
  if (snr !== null || received === null) return [];
  const noFilter = seen.bandwidth === null;
  return [
    {
      field: noFilter ? 'filter.noiseBandwidth' : 'receive.floor',
      weight: 'stops',
      says: `Signal over noise waits for ${noFilter ? 'Filter' : 'Receive'}.`,
    },
  ];
}
