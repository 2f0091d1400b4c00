import { noResults, type Problem, type Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import { driftFields } from './fields.ts';
import type { DriftSeen, Placed } from './seen.ts';
import { covers, seriesAt } from './tolerance.ts';
import { dividerShares, overWarmth, perDegree, quartzShift } from './warmth.ts';
import { waysOut } from './waysOut.ts';

/** Off by more than this a voice sounds wrong, Hz. */
const HEARD = 50;

/** What moves the carrier, and what to do where it can't be reached. */
export function workDrift(seen: DriftSeen): Work<typeof driftFields> {
  const { carrier, fs, lm, rm, c0, together, divider, gm, cpi } = seen;
  if (
    carrier === null ||
    fs === null ||
    lm === null ||
    rm === null ||
    c0 === null ||
    together === null ||
    divider === null ||
    gm === null ||
    cpi === null
  ) {
    return { results: noResults(driftFields), problems: [] };
  }
  const placed: Placed = { ...seen, carrier, fs, lm, rm, c0, together, divider, gm, cpi };
  const ways = waysOut(placed);
  const rates = perDegree(placed);
  const results = { ...noResults(driftFields), waysOut: ways };
  if (rates === null || seen.hzPerStray === null) return { results, problems: [] };

  const others = rates.ofParts + rates.ofTransistor;
  const quartz = quartzShift(seen.slope, seen.warmer);
  const middle = seen.low6 === null || seen.high6 === null ? fs : (seen.low6 + seen.high6) / 2;
  const wanders = carrier * quartz + others * seen.warmer;
  const leastC = seriesAt(placed, -1);
  const mostC = seriesAt(placed, 1);
  const shares = dividerShares(placed);
  const work: Work<typeof driftFields>['results'] = {
    ...results,
    perDegree: rates.ofCrystal + others,
    ...rates,
    wanders,
    against: wanders - middle * quartz,
    overWarmth: overWarmth(placed, others),
    bufferPull: -seen.hzPerStray * shares.second * seen.buffer,
    startLoaded: startLoaded(placed),
    leastC,
    mostC,
    ...covers(leastC, mostC),
  };
  return { results: work, problems: problems(seen, work) };
}

/** Start margin with a resistance across C2: it takes its share of the transconductance. */
function startLoaded(seen: Placed): number | null {
  if (seen.startMargin === null) return null;
  const wcr = 2 * Math.PI * seen.carrier * seen.c2 * seen.bufferResistance;
  const taken = (seen.c1 + seen.cpi) / (seen.gm * seen.c2 * seen.bufferResistance);
  return (seen.startMargin * (1 - taken)) / (1 + 1 / (wcr * wcr));
}

function problems(seen: DriftSeen, found: Work<typeof driftFields>['results']): Problem[] {
  const out: Problem[] = [];
  const { wanders, covers: trimmer, startLoaded: start, leastC, mostC } = found;
  if (wanders !== null && Math.abs(wanders) > HEARD) {
    out.push({
      field: 'drift.warmer',
      weight: 'warns',
      says: `Warming by ${format(seen.warmer, 'K', 2)} moves the carrier by ${format(Math.abs(wanders), 'Hz', 2)}.`,
      try: 'Capacitors of kind C0G in the oscillator, less pulling, or a few minutes of patience before the net begins.',
    });
  }
  if (trimmer === 'fails') {
    out.push({
      field: 'drift.spread',
      weight: 'warns',
      says:
        leastC === null || mostC === null
          ? 'At one end of the spread no series capacitor puts the carrier right.'
          : `The spread asks for ${format(leastC, 'F', 2)} to ${format(mostC, 'F', 2)}, more than a trimmer turns through.`,
      try: 'Measure the crystal in its oscillator first, then choose the fixed capacitor.',
    });
  }
  if (start !== null && start < 3 && (seen.startMargin ?? 0) >= 3) {
    out.push({
      field: 'drift.bufferResistance',
      weight: 'warns',
      says: `With the buffer connected the transistor gives only ${format(start, '1', 2)} times the crystal’s resistance.`,
      try: 'A follower between oscillator and mixer, or more standing current.',
    });
  }
  return out;
}
