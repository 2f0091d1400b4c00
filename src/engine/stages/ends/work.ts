import type { Ladder } from '../../circuit/ladder.ts';
import { noResults, type Problem, type Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import { adviceFor } from './advice.ts';
import { type Between, curveFrequencies, gainAlong, isFilter, passbandBetween } from './between.ts';
import { endsFields } from './fields.ts';
import type { EndsSeen } from './seen.ts';
import { loadSide, type Side, seenBy, sourceSide } from './sides.ts';
import { wayRows } from './wayRows.ts';

type Answer = Work<typeof endsFields>;

/** Ripple more than with right ends: little, and too much, dB. Common practice, no source. */
export const LITTLE = 0.3;
export const MUCH = 1;

/** What the filter sees, what that does to it, and the ways to put it right. */
export function workEnds(seen: EndsSeen): Answer {
  const { ladder, ends, endsLoad, low3, high3 } = seen;
  const source = sourceSide(seen);
  const load = loadSide(seen);
  const right = passbandBetween(ladder, [ends, 0], [endsLoad, 0], low3, high3);
  if (!isFilter(right)) {
    const says =
      'Between the ends that it is designed for, this filter lets next to nothing through.';
    return {
      results: noResults(endsFields),
      problems: [{ field: 'filter.leakageDb', weight: 'stops', says, try: 'See the Design leaf.' }],
    };
  }
  const placed = placedReally(source, load);
  const between =
    placed === null ? null : passbandBetween(ladder, placed.source, placed.load, low3, high3);
  const real = between !== null && isFilter(between) ? between : null;
  const frequency = curveFrequencies(right.band);
  const rightLoss = -right.band.gain;
  const wholeLoss =
    real === null || placed === null ? null : -real.band.gain + placed.before + placed.behind;
  const rippleCost = real === null ? null : real.dip.depth - right.dip.depth;
  return {
    results: {
      ...rightFigures(right),
      ...realFigures(real),
      wholeLoss,
      rippleCost,
      lossCost: wholeLoss === null ? null : wholeLoss - rightLoss,
      verdict:
        rippleCost === null
          ? null
          : rippleCost < LITTLE
            ? 'holds'
            : rippleCost < MUCH
              ? 'close'
              : 'fails',
      rightResponse: gainAlong(right, frequency),
      realResponse: real === null ? null : gainAlong(real, frequency),
      sourceGives: source?.gives.r ?? null,
      sourceGivesX: source?.gives.x ?? null,
      sourceCoil: source?.coil ?? null,
      sourceWays: source === null ? null : wayRows(source),
      sourceSeen: placed?.source[0] ?? null,
      sourceSeenX: placed?.source[1] ?? null,
      sourceLoss: placed?.before ?? null,
      sourceAdvice: source === null ? null : adviceFor(source, 'amplifier'),
      loadGives: load?.gives.r ?? null,
      loadGivesX: load?.gives.x ?? null,
      loadCoil: load?.coil ?? null,
      loadWays: load === null ? null : wayRows(load),
      loadSeen: placed?.load[0] ?? null,
      loadSeenX: placed?.load[1] ?? null,
      loadLoss: placed?.behind ?? null,
      loadAdvice: load === null ? null : adviceFor(load, 'amplifier'),
      ...trick(seen, rightLoss),
    },
    problems: [...problems(seen, source, load), ...(between !== real ? [noPassband] : [])],
  };
}

/** What both ends of the filter see, and the dB that the matching takes; null if not known. */
function placedReally(source: Side | null, load: Side | null) {
  if (source === null || load === null) return null;
  const before = seenBy(source, source.by);
  const behind = seenBy(load, load.by);
  const loss = (passes: number) => -10 * Math.log10(passes);
  return {
    source: [before.r, before.x] satisfies Ladder['source'],
    load: [behind.r, behind.x] satisfies Ladder['load'],
    before: loss(before.passes),
    behind: loss(behind.passes),
  };
}

const rightFigures = ({ band, dip }: Between) => ({
  rightRipple: dip.depth,
  rightLoss: -band.gain,
  rightWidth: band.high - band.low,
  rightPeak: band.peak,
  rightLow: band.low,
  rightHigh: band.high,
});

const realFigures = (real: Between | null) => ({
  realRipple: real?.dip.depth ?? null,
  realLoss: real === null ? null : -real.band.gain,
  realWidth: real === null ? null : real.band.high - real.band.low,
  realPeak: real?.band.peak ?? null,
  realLow: real?.band.low ?? null,
  realHigh: real?.band.high ?? null,
});

/** Resistors between an analyser and the filter; null where its ports are already higher. */
function trick({ ends, endsLoad, port, range }: EndsSeen, loss: number) {
  const [first, second] = [ends - port, endsLoad - port];
  if (first < 0 || second < 0) {
    return {
      trickSource: null,
      trickLoad: null,
      trickRange: null,
      trickReading: null,
      trickDepth: null,
    };
  }
  const cost = 10 * Math.log10((ends / port) * (endsLoad / port));
  return {
    trickSource: first,
    trickLoad: second,
    trickRange: cost,
    trickReading: -(loss + cost),
    trickDepth: range - loss - cost,
  };
}

const noPassband: Problem = {
  field: 'ends.sourceBy',
  weight: 'warns',
  says: 'Between what is really there next to nothing comes through the filter.',
  try: 'Match at least one end.',
};

function problems(seen: EndsSeen, source: Side | null, load: Side | null): Problem[] {
  const found: Problem[] = [];
  const ohms = (value: number) => format(value, 'Ω', 3);
  for (const [side, key, end] of [
    [source, 'source', seen.ends],
    [load, 'load', seen.endsLoad],
  ] as const) {
    if (side === null) continue;
    const sees = seenBy(side, side.by);
    const far = Math.hypot(sees.r - end, sees.x) / Math.hypot(sees.r + end, sees.x);
    // Half or double the right resistance reflects a third.
    if (far < 1 / 3 - 1e-9) continue;
    const { r, x } = side.gives;
    const capacitive = x < -0.1 * r && side.coil === null;
    const coil = (r * r + x * x) / (2 * Math.PI * side.centre * Math.max(-x, 1e-9));
    found.push({
      field: capacitive ? `ends.${key}Tuned` : `ends.${key}By`,
      weight: 'warns',
      says: `The filter’s ${key === 'source' ? 'input' : 'output'} sees ${ohms(sees.r)}${Math.abs(sees.x) > 0.05 * sees.r ? ` and ${ohms(sees.x)} of reactance` : ''} where it wants ${ohms(end)}.`,
      try: capacitive
        ? `Capacitance lies across what stands there: a coil of ${format(coil, 'H', 2)} across it tunes that out.`
        : 'Another way of matching below, or look whether it was worked out for what is really there.',
    });
  }
  return found;
}
