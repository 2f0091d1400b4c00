import { seriesResonance } from '../../circuit/crystal.ts';
import type { Ladder } from '../../circuit/ladder.ts';
import { passband } from '../../circuit/passband.ts';
import { passbandRipple } from '../../circuit/passbandRipple.ts';
import { closest } from '../../stages/bag/statistics.ts';
import { downhill } from './downhill.ts';
import { around, gridOf } from './grid.ts';
import { judgeOf } from './judge.ts';
import { type Against, type Looks, meritOf } from './merit.ts';
import { poolOf } from './pool.ts';
import { type Effort, search, usual } from './search.ts';
import type { Arrangement, Task } from './task.ts';

/** An arrangement with the filter that it makes. */
export interface Arranged extends Looks {
  readonly arrangement: Arrangement;
  readonly ladder: Ladder;
  readonly merit: number;
  /** −3 dB points, Hz. */
  readonly low: number;
  readonly high: number;
}

export interface Choice {
  readonly chosen: Arranged;
  /** The n closest neighbours in order of frequency, from source to load. */
  readonly closest: Arranged;
  /** How many arrangements were looked at. */
  readonly looks: number;
}

/** The best of the search are looked at more closely, and improved with all their digits. */
const REFINED = 6;
/** Looks at each of them. */
const CLOSE_LOOKS = 500;
const NEAR = 6;

/**
 * Chooses n crystals of a bag and their order, by the response that results with the parts that
 * will be fitted. The ripple is never more than that of the n closest neighbours in order of
 * frequency, which are themselves among the candidates.
 *
 * @return yields the part that is done, 0 to 1
 */
export function* arrange(
  task: Task,
  seed: number,
  effort: Effort = usual,
): Generator<number, Choice, void> {
  const n = task.design.lm.length;
  const count = task.crystals.length;
  const frequencies = task.crystals.map(seriesResonance);
  const first = closest(frequencies, n);
  const neighbours = Array.from({ length: n }, (_, i) => first + i);
  let looks = 0;

  // Few points first: thousands of arrangements.
  const coarse = gridOf(task, 4 * n + 8);
  const quick = judgeOf(task, coarse.offsets);
  const roughly: Against = { width: coarse.width, ripple: quick.look(neighbours).ripple };
  const found = yield* part(
    search(
      (arrangement) => {
        looks += 1;
        return meritOf(quick.look(arrangement), roughly);
      },
      count,
      n,
      seed,
      effort,
    ),
    0,
    0.7,
  );

  // Then many points: the best, and the neighbours themselves, with all their digits.
  const fine = gridOf(task, 12 * n + 24);
  const careful = judgeOf(task, fine.offsets);
  const against: Against = { width: fine.width, ripple: careful.look(neighbours).ripple };
  const pool = poolOf(40);
  const starts = [neighbours, ...found.slice(0, REFINED).map(({ arrangement }) => arrangement)];
  for (const [k, start] of starts.entries()) {
    let left = CLOSE_LOOKS;
    const merit = (arrangement: Arrangement) => {
      left -= 1;
      looks += 1;
      const here = meritOf(careful.look(arrangement), against);
      pool.add(arrangement, here);
      return here;
    };
    const steps = downhill([...start], count, NEAR, merit, () => left > 0);
    for (let step = steps.next(); !step.done; step = steps.next()) {
      if (left % 50 === 0) yield 0.7 + (0.25 * (k + 1 - left / CLOSE_LOOKS)) / starts.length;
    }
  }

  const exactly = (arrangement: Arrangement): Arranged =>
    workedOut(task, careful.build(arrangement), arrangement, careful.look(arrangement), against);
  const base = exactly(neighbours);
  let chosen = base;
  for (const { arrangement } of pool.best()) {
    const one = exactly(arrangement);
    if (one.ripple <= base.ripple && one.merit < chosen.merit) chosen = one;
    yield 0.97;
  }
  return { chosen, closest: base, looks };
}

/** Ripple and edges as the Filter sheet finds them, on the ladder itself. */
function workedOut(
  { low, high, alike, crystals }: Task,
  ladder: Ladder,
  arrangement: Arrangement,
  looks: Looks,
  against: Against,
): Arranged {
  const mean =
    arrangement.reduce((sum, c) => {
      const crystal = crystals[c];
      return sum + (crystal ? seriesResonance(crystal) : 0);
    }, 0) / arrangement.length;
  const shift = mean - seriesResonance(alike);
  const at = around(low + shift, high + shift, arrangement.length);
  const band = passband(ladder, at, 1e-4);
  const { depth } = passbandRipple(ladder, at, band);
  const { fall } = looks;
  const exact = { ripple: depth, fall, width: band.high - band.low, loss: -band.gain };
  return {
    ...exact,
    arrangement,
    ladder,
    merit: meritOf(exact, against),
    low: band.low,
    high: band.high,
  };
}

/** Reports of a piece of work as the part of the whole from one fraction to another. */
function* part<A>(
  work: Generator<number, A, void>,
  from: number,
  to: number,
): Generator<number, A, void> {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    yield from + (to - from) * step.value;
  }
}
