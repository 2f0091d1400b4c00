import { standingWaveLoss } from '../../circuit/standingWaveLoss.ts';
import { type FeedLineKey, feedLines, matchedLoss } from '../../data/feedLines.ts';
import { noResults, type Problem, type Work } from '../../fields/stage.ts';
import { powerRatioOfDb } from '../../quantity/decibel.ts';
import { format } from '../../quantity/format.ts';
import { antennaResistance, swrHolds } from './antennaResistance.ts';
import { feedFields } from './fields.ts';
import type { FeedSeen } from './seen.ts';

type Results = Work<typeof feedFields>['results'];

/** What the lines to both antennas take. */
export function workFeed(seen: FeedSeen): Work<typeof feedFields> {
  const resistance = antennaResistance(seen);
  const results: Results = {
    ...noResults(feedFields),
    ...ownLine(seen, resistance),
    ...farLine(seen, seen.same === 'same' ? resistance : null),
    kinds: (Object.keys(feedLines) as FeedLineKey[]).map((line) => {
      const typed = swrHolds(seen.line, line) ? seen.swr : null;
      if (seen.swr !== null && typed === null && resistance === null) {
        const matched = matchedLoss(feedLines[line], seen.length, seen.frequency);
        return { line, swr: null, matched, total: null, share: null };
      }
      const { swr, matched, total } = over(line, seen.length, typed, resistance, seen.frequency);
      return { line, swr, matched, total, share: powerRatioOfDb(-total) };
    }),
  };
  return {
    results,
    problems: problems(seen, results),
    origins: {
      loss: seen.line === 'known' ? 'typed' : 'worked',
      farLoss: seen.farLine === 'known' ? 'typed' : 'worked',
    },
  };
}

function ownLine(seen: FeedSeen, resistance: number | null): Partial<Results> {
  if (seen.line === 'known') return { loss: seen.knownLoss };
  const { swr, matched, total, swrIn } = over(
    seen.line,
    seen.length,
    seen.swr,
    resistance,
    seen.frequency,
  );
  return { swrUsed: swr, matched, added: total - matched, loss: total, swrRig: swrIn };
}

function farLine(seen: FeedSeen, resistance: number | null): Partial<Results> {
  if (seen.farLine === 'known') return { farLoss: seen.farKnownLoss };
  const { swr, matched, total } = over(
    seen.farLine,
    seen.farLength,
    seen.farSwr,
    resistance,
    seen.frequency,
  );
  return { farSwrUsed: swr, farMatched: matched, farLoss: total };
}

/** One line to an antenna. */
function over(
  key: FeedLineKey,
  length: number,
  typed: number | null,
  resistance: number | null,
  frequency: number,
) {
  const line = feedLines[key];
  const swr = typed ?? swrOf(resistance, line.impedance);
  const matched = matchedLoss(line, length, frequency);
  return { swr, matched, ...standingWaveLoss(matched, swr) };
}

/** SWR that a resistance makes on a line; 1 where it is not known. */
const swrOf = (resistance: number | null, impedance: number): number =>
  resistance === null ? 1 : Math.max(resistance / impedance, impedance / resistance);

/** From here on a tuner has to do something, and from here on the line is the wrong one. */
const TUNED = 2;
const WASTED = 3;

function problems({ line }: FeedSeen, { loss, swrRig }: Results): Problem[] {
  if (line === 'known' || loss === null || swrRig === null) return [];
  const out: Problem[] = [];
  if (loss > WASTED) {
    out.push({
      field: 'feed.line',
      weight: 'warns',
      says: `The line takes ${format(loss, 'dB', 2)}: more than half the power warms it.`,
      try: 'A better or shorter line, or an antenna that suits the line.',
    });
  }
  if (swrRig > TUNED) {
    out.push({
      field: 'feed.swr',
      weight: 'warns',
      says: `SWR ${format(swrRig, '1', 2)} at the rig: a tuner is needed there, and what it loses is not counted.`,
      try: 'The Mismatch leaf of Output says what the rig makes of it without one.',
    });
  }
  return out;
}
