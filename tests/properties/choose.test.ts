import { describe, expect, test } from 'vitest';
import type { Aligning } from '../../src/engine/circuit/alignedLadder.ts';
import { ladderGain } from '../../src/engine/circuit/ladderGain.ts';
import { type Arranged, arrange, type Choice } from '../../src/engine/errands/choose/arrange.ts';
import { finish } from '../../src/engine/errands/drive.ts';
import { exhaustive } from './exhaustive.ts';
import { randomBag } from './randomBag.ts';

const median = (values: readonly number[]) =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

/** What must be true of each choice. */
function checkChoice({ chosen, closest }: Choice, count: number, says: string) {
  if (!chosen || !closest) throw new Error(`${says}: no filter`);
  expect(chosen.ripple, says).toBeLessThanOrEqual(closest.ripple);
  expect(chosen.merit, says).toBeLessThanOrEqual(closest.merit);
  expect(new Set(chosen.arrangement).size, says).toBe(chosen.arrangement.length);
  for (const c of chosen.arrangement) expect(c >= 0 && c < count, says).toBe(true);
  return { chosen, closest };
}

/** Ripple found the plain way: gains a hertz or so apart, dips with a hump on both sides. */
function plainRipple({ ladder, low, high }: Arranged): number {
  const f = Float64Array.from({ length: 2001 }, (_, i) => low + ((high - low) * i) / 2000);
  const gain = new Float64Array(2001);
  ladderGain(ladder, f, gain);
  const best = Math.max(...gain);
  let deepest = best;
  for (let i = 1; i < 2000; i += 1) {
    const here = gain[i] as number;
    if (here < (gain[i - 1] as number) && here <= (gain[i + 1] as number)) {
      deepest = Math.min(deepest, here);
    }
  }
  return best - deepest;
}

describe.each<[Aligning, number]>([
  ['design', 50],
  ['each', 6],
  ['none', 3],
])('aligned by %s', (aligning, bags) => {
  test(`on ${bags} random bags of 30 the ripple is never worse than that of the closest neighbours`, () => {
    const gains: number[] = [];
    const merits: number[] = [];
    const before: number[] = [];
    const times: number[] = [];
    for (let seed = 1; seed <= bags; seed += 1) {
      const task = randomBag(seed, 30, [4, 5, 6, 7, 8], aligning);
      const from = process.cpuUsage().user;
      const choice = finish(arrange(task, 1));
      times.push((process.cpuUsage().user - from) / 1000);
      const { chosen, closest } = checkChoice(choice, 30, task.says);
      // An independent look at the same two filters.
      const plain = [plainRipple(chosen), plainRipple(closest)] as const;
      expect(plain[0], task.says).toBeLessThanOrEqual(plain[1] + 2e-3);
      gains.push(closest.ripple - chosen.ripple);
      merits.push(closest.merit - chosen.merit);
      before.push(closest.ripple);
    }
    console.info(
      `${bags} bags, ${aligning}: closest neighbours ripple ${median(before).toFixed(3)} dB (median); gain in ripple median ${median(gains).toFixed(3)} dB, most ${Math.max(...gains).toFixed(2)} dB, least ${Math.min(...gains).toFixed(3)} dB; in merit median ${median(merits).toFixed(3)} dB; processor time median ${median(times).toFixed(0)} ms, most ${Math.max(...times).toFixed(0)} ms`,
    );
    expect(median(merits)).toBeGreaterThan(0);
  }, 120_000);
});

// Every arrangement of small bags, mirrored ones once: nothing is left out that could be better.
test('within 5 % of exhaustive search, where that is feasible', () => {
  let worst = 0;
  let hit = 0;
  // The last two have more arrangements than the search looks at one by one.
  const shapes = [
    ...Array(4).fill([9, 3]),
    ...Array(4).fill([9, 4]),
    ...Array(2).fill([7, 5]),
    ...Array(2).fill([9, 5]),
  ] as [number, number][];
  for (const [i, [count, n]] of shapes.entries()) {
    const task = randomBag(101 + i, count, [n], i % 3 === 2 ? 'each' : 'design');
    const choice = finish(arrange(task, 1));
    const { chosen } = checkChoice(choice, count, task.says);
    const best = exhaustive(task, choice);
    worst = Math.max(worst, chosen.merit / best);
    if (chosen.merit <= best * (1 + 1e-9)) hit += 1;
    expect(chosen.merit, task.says).toBeLessThanOrEqual(1.05 * best);
  }
  console.info(
    `12 bags of 7 to 9: at most ${(100 * (worst - 1)).toFixed(2)} % above exhaustive search, the very best in ${hit}`,
  );
}, 120_000);

test('the same seed gives the same choice; work is given in small pieces', () => {
  const task = randomBag(3, 30, [6], 'design');
  const one = finish(arrange(task, 1));
  expect(finish(arrange(task, 1))).toEqual(one);
  const work = arrange(task, 1);
  let pieces = 0;
  let last = -1;
  for (let step = work.next(); !step.done; step = work.next()) {
    expect(step.value).toBeGreaterThanOrEqual(0);
    expect(step.value).toBeLessThanOrEqual(1);
    last = Math.max(last, step.value);
    pieces += 1;
  }
  expect(pieces).toBeGreaterThan(100);
  expect(last).toBeGreaterThan(0.9);
});

test('a bag of just enough, and crystals all alike', () => {
  const task = randomBag(5, 6, [6], 'design');
  checkChoice(finish(arrange(task, 1)), 6, task.says);
  const alike = { ...task, crystals: Array(8).fill(task.alike) };
  const { chosen, closest } = checkChoice(finish(arrange(alike, 1)), 8, 'alike');
  expect(chosen.merit).toBeCloseTo(closest.merit, 6);
});
