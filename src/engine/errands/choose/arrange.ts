import { seriesResonance } from '../../circuit/crystal.ts';
import type { Ladder } from '../../circuit/ladder.ts';
import { powerGainAt } from '../../circuit/ladderGain.ts';
import { passband } from '../../circuit/passband.ts';
import { passbandRipple } from '../../circuit/passbandRipple.ts';
import { closest } from '../../stages/bag/statistics.ts';
import { chanceOf } from './chance.ts';
import { downhill } from './downhill.ts';
import { every, waysOf } from './every.ts';
import { around, gridOf } from './grid.ts';
import { apartOf, judgeOf } from './judge.ts';
import { lookAt } from './lookAt.ts';
import { type Against, type Looks, meritOf } from './merit.ts';
import { poolOf } from './pool.ts';
import { type Effort, NEAR, search, shaken, usual } from './search.ts';
import { type Arrangement, positionsOf, type Task } from './task.ts';

/** A filter as it is built of certain crystals. */
export interface Built {
  readonly ladder: Ladder;
  /** As on the Filter sheet, dB. */
  readonly ripple: number;
  readonly loss: number;
  /** −3 dB points, Hz. */
  readonly low: number;
  readonly high: number;
}

/** An arrangement with the filter that it makes. */
export interface Arranged extends Built {
  readonly arrangement: Arrangement;
  /** From the best point to the lowest one within the middle seven tenths of the width, dB. */
  readonly fall: number;
  readonly width: number;
  /** From the lowest to the highest series resonance, Hz. */
  readonly apart: number;
  readonly merit: number;
}

export interface Choice {
  /** Null where no arrangement makes a filter. */
  readonly chosen: Arranged | null;
  /** The n closest neighbours in order of frequency, from source to load. */
  readonly closest: Arranged | null;
  /** How many arrangements were looked at. */
  readonly looks: number;
}

const STREAM = 0x46494e45;
/** The best of the search are looked at more closely, and improved with all their digits. */
const REFINED = 6;
/** Careful looks, of many points each. */
const CAREFUL_LOOKS = 4000;
/** So few arrangements are all looked at carefully. */
const FEW = 3100;
/** Arrangements that are looked at once more, for the slightest dip, until enough have none too deep. */
const CANDIDATES = 800;
const ENOUGH = 60;
/** Arrangements of which the whole filter is built at the end. */
const FINALISTS = 12;

/**
 * Chooses n crystals of a bag and their order, by the response that results with the parts that
 * will be fitted. The ripple is never more than that of the n closest neighbours in order of
 * frequency, which are themselves among the candidates.
 *
 * @param build the filter with all its parts for an arrangement, for the last comparison; by itself
 *   the ladder of the task
 * @return yields the part that is done, 0 to 1
 */
export function* arrange(
  task: Task,
  seed: number,
  build: (arrangement: Arrangement, ladder: Ladder) => Built | null = (a, l) => asItIs(task, a, l),
  effort: Effort = usual,
): Generator<number, Choice, void> {
  const n = positionsOf(task).length;
  const count = task.crystals.length;
  const frequencies = task.crystals.map(seriesResonance);
  const fs = Float64Array.from(frequencies);
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
  const ways = waysOf(count, n);
  const few = ways <= FEW;
  const pool = poolOf(few ? ways : CANDIDATES);
  let left = CAREFUL_LOOKS;
  const merit = (arrangement: Arrangement) => {
    left -= 1;
    const here = meritOf(careful.look(arrangement), against);
    pool.add(arrangement, here);
    return here;
  };
  function* down(arrangement: number[], reach: number): Generator<number, number, void> {
    const steps = downhill(arrangement, count, reach, merit, () => left > 0);
    for (;;) {
      const step = steps.next();
      if (step.done) return step.value;
      if (left % 50 === 0) yield 0.95 - (0.25 * left) / CAREFUL_LOOKS;
    }
  }
  const starts = [neighbours, ...found.slice(0, REFINED).map(({ arrangement }) => arrangement)];
  if (few) {
    // So few that all can be looked at.
    for (const arrangement of every(count, n)) {
      merit(arrangement);
      if (left % 50 === 0) yield 0.8;
    }
  } else {
    for (const start of starts) yield* down([...start], NEAR);
    yield* shaken(pool, count, chanceOf(seed, STREAM), () => left > 0, down);
  }
  looks += CAREFUL_LOOKS - left;

  const exactly = (arrangement: Arrangement, built: Built | null): Arranged | null => {
    if (built === null) return null;
    const looked = { ...looksOf(built), apart: apartOf(arrangement, fs) };
    const ripple = Math.max(built.ripple, finestDip(built));
    return { ...built, ...looked, ripple, arrangement, merit: meritOf(looked, against) };
  };
  const plainly = (arrangement: Arrangement) =>
    exactly(arrangement, asItIs(task, arrangement, careful.build(arrangement)));
  const wholly = (arrangement: Arrangement) =>
    exactly(arrangement, build(arrangement, careful.build(arrangement)));
  const most = plainly(neighbours)?.ripple ?? 0;
  const candidates: Arranged[] = [];
  let last = Number.NaN;
  for (const { arrangement, merit: here } of pool.best()) {
    // The mirror image of the one before?
    if (Math.abs(here - last) < 1e-9) continue;
    last = here;
    const one = plainly(arrangement);
    if (one !== null && one.ripple <= most) candidates.push(one);
    if (candidates.length >= ENOUGH) break;
    yield 0.95;
  }
  candidates.sort((a, b) => a.merit - b.merit);
  const base = wholly(neighbours);
  let chosen = base;
  for (const { arrangement } of candidates.slice(0, FINALISTS)) {
    yield 0.98;
    const one = wholly(arrangement);
    if (one === null || (base !== null && one.ripple > base.ripple)) continue;
    if (chosen === null || one.merit < chosen.merit) chosen = one;
  }
  return { chosen, closest: base, looks };
}

/** Ripple and edges as the Filter sheet finds them, on the ladder itself. */
export function asItIs(
  { low, high, alike, crystals }: Task,
  arrangement: Arrangement,
  ladder: Ladder,
): Built {
  const off = arrangement.map((c) => {
    const crystal = crystals[c];
    return crystal ? seriesResonance(crystal) - seriesResonance(alike) : 0;
  });
  const shift = off.reduce((sum, one) => sum + one, 0) / off.length;
  const at = around(low + shift, high + shift, arrangement.length);
  const band = passband(ladder, at, 1e-4);
  const { depth } = passbandRipple(ladder, at, band);
  return { ladder, ripple: depth, loss: -band.gain, low: band.low, high: band.high };
}

/** The deepest dip, looked for so closely that the slightest counts, dB. */
export function finestDip({ ladder, loss, low, high }: Built): number {
  const step = (high - low) / 400;
  const at = Array.from({ length: 399 }, (_, i) => low + (i + 1) * step);
  return passbandRipple(ladder, at, { peak: low, gain: -loss, low, high }).depth;
}

/** What the whole of a passband looks like, from many points. */
export function looksOf({ ladder, loss, low, high }: Built): Looks {
  const at = Float64Array.from(around(low, high, ladder.lm.length, 0.2));
  const gain = at.map((f) => powerGainAt(ladder, f));
  const looks = { ripple: 0, fall: 0, width: 0, loss: 0 };
  lookAt(at, gain, looks);
  return { ...looks, width: high - low, loss };
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
