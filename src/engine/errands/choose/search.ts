import { chanceOf } from './chance.ts';
import { downhill } from './downhill.ts';
import { orders } from './orders.ts';
import { type Found, type Pool, poolOf } from './pool.ts';
import type { Arrangement } from './task.ts';

/** How much to look at. Counted, not timed, so that the same bag always gives the same answer. */
export interface Effort {
  /** Looks in all, about. */
  readonly looks: number;
  /** Runs of neighbours that are searched beyond their own crystals. */
  readonly runs: number;
}

export const usual: Effort = { looks: 24_000, runs: 6 };

const STREAM = 0x43484f53;
/** Looks between two reports. */
const REPORT = 100;
/** The best arrangements that are handed on. */
const KEPT = 24;
/** Neighbours by frequency that a crystal is exchanged for at first. */
export const NEAR = 6;

/**
 * Looks for the arrangement of n of the crystals with the least merit.
 *
 * Every run of n neighbours by frequency is tried in several orders, then improved by exchanging two
 * positions. From the best runs it goes downhill by exchanges of positions and of crystals, and
 * from the best of all again after a few of its crystals have been shuffled by chance.
 *
 * @param merit dB, the less the better
 * @param count crystals in the bag, in order of frequency
 * @return the best arrangements, best first; yields the part that is done
 */
export function* search(
  merit: (arrangement: Arrangement) => number,
  count: number,
  n: number,
  seed: number,
  effort: Effort = usual,
): Generator<number, readonly Found[], void> {
  const chance = chanceOf(seed, STREAM);
  const pool = poolOf(KEPT);
  let looks = 0;
  const meritAt = (arrangement: Arrangement): number => {
    looks += 1;
    const found = merit(arrangement);
    pool.add(arrangement, found);
    return found;
  };
  const goOn = () => looks < effort.looks;
  function* down(arrangement: number[], reach: number): Generator<number, number, void> {
    const steps = downhill(arrangement, count, reach, meritAt, goOn);
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
      if (looks % REPORT === 0) yield Math.min(1, looks / effort.looks);
    }
  }

  const runs: { start: number[]; merit: number }[] = [];
  // Half of the looks at most; a run settles within about n² of them.
  const tried = Math.max(1, Math.floor((effort.looks * 0.5) / (count - n + 1) / (n * n)));
  for (let first = 0; first + n <= count; first += 1) {
    let best = { start: [] as number[], merit: Number.POSITIVE_INFINITY };
    for (const order of orders(n).slice(0, tried)) {
      const start = order.map((place) => first + place);
      const reached = yield* down(start, 0);
      if (reached < best.merit) best = { start, merit: reached };
    }
    runs.push(best);
  }
  runs.sort((a, b) => a.merit - b.merit);
  for (const { start } of runs.slice(0, effort.runs)) {
    yield* down(start, NEAR);
    yield* down(start, count);
  }

  yield* shaken(pool, count, chance, goOn, down);
  return pool.best();
}

/** From the best of all, shuffled a little by chance, downhill again, as long as it may go on. */
export function* shaken<Y>(
  pool: Pool,
  count: number,
  chance: () => number,
  goOn: () => boolean,
  down: (arrangement: number[], reach: number) => Generator<Y, number, void>,
): Generator<Y, void, void> {
  let [champion] = pool.best();
  while (goOn() && champion) {
    const arrangement = [...champion.arrangement];
    const kicks = 2 + Math.floor(3 * chance());
    for (let k = 0; k < kicks; k += 1) kick(arrangement, count, chance);
    const reached = yield* down(arrangement, chance() < 0.5 ? NEAR : count);
    if (reached < champion.merit) champion = { arrangement, merit: reached };
  }
}

/** Exchanges one position, by chance, with another or with a crystal near it that is free. */
function kick(arrangement: number[], count: number, chance: () => number): void {
  const n = arrangement.length;
  const i = Math.floor(n * chance());
  const was = arrangement[i] as number;
  if (chance() < 0.5) {
    const other = Math.floor(n * chance());
    arrangement[i] = arrangement[other] as number;
    arrangement[other] = was;
    return;
  }
  const away = Math.round((2 * chance() - 1) * NEAR);
  const next = Math.min(count - 1, Math.max(0, was + away));
  if (!arrangement.includes(next)) arrangement[i] = next;
}
