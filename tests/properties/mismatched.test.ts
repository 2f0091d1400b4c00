import fc from 'fast-check';
import { expect, test } from 'vitest';
import { finish } from '../../src/engine/errands/drive.ts';
import { mismatchedErrand } from '../../src/engine/errands/mismatched/errand.ts';
import {
  type MismatchedSeen,
  mismatchedWork,
} from '../../src/engine/errands/mismatched/mismatchedWork.ts';
import { pick, seenBy } from '../../src/engine/errands/pick.ts';
import { powerWork } from '../../src/engine/errands/power/powerWork.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';

const rig = examples[0];
if (!rig) throw new Error('no example');
const worked = createEvaluator(stages)(rig);
const seen = seenBy(mismatchedErrand, pick(worked, mismatchedErrand)) as unknown as MismatchedSeen;

// Source: what the questions mean; a load that reflects is the right load where it reflects nothing.
test('begins at the final into its right load and goes once round each ratio', () => {
  const { matched, rounds } = finish(mismatchedWork({ ...seen, swr: 1.2 }));
  const { found } = finish(powerWork(seen));
  expect(matched?.power).toBe(found?.figures.power);
  expect(matched?.voltage).toBe(found?.figures.peakVoltage);
  expect(matched?.dissipation).toBe(found?.each.dissipation);
  expect(matched?.margin).toBe(found?.worstMargin);
  expect(rounds.map(({ swr }) => swr)).toEqual([1.2, 1.5, 2, 3]);
  let before = matched?.voltage ?? 0;
  for (const { points, missing, worst } of rounds) {
    expect(missing).toBe(0);
    expect(points).toHaveLength(12);
    expect(worst?.voltage.voltage).toBe(Math.max(...points.map(({ voltage }) => voltage)));
    expect(worst?.power.power).toBe(Math.min(...points.map(({ power }) => power)));
    // The worse the match, the higher the collector goes somewhere on the way round.
    expect(worst?.voltage.voltage).toBeGreaterThan(before);
    before = worst?.voltage.voltage ?? 0;
  }
});

test('whatever is asked: every figure is one, or the angle is left out', () => {
  const any = (min: number, max: number) =>
    fc
      .double({ min: Math.log(min), max: Math.log(max), noNaN: true })
      .map((exponent) => Math.exp(exponent));
  const wild = fc.record({
    nominal: any(1.6e6, 3e7),
    supply: any(3, 30),
    pep: any(0.05, 20),
    quiescent: fc.oneof(fc.constant(0), any(1e-3, 0.2)),
    ballast: fc.oneof(fc.constant(0), any(0.1, 5)),
    swr: fc.double({ min: 1, max: 3, noNaN: true }),
    arrangement: fc.record({
      sides: fc.constantFrom(1 as const, 2 as const),
      gang: fc.integer({ min: 1, max: 4 }),
      unlike: fc.double({ min: 0, max: 1, noNaN: true }),
    }),
  });
  fc.assert(
    fc.property(wild, (asked) => {
      const { rounds, matched, says } = finish(mismatchedWork({ ...seen, ...asked }));
      expect(says.length).toBeGreaterThan(10);
      for (const point of [...(matched ? [matched] : []), ...rounds.flatMap((r) => r.points)]) {
        for (const figure of Object.values(point)) expect(Number.isFinite(figure)).toBe(true);
      }
      for (const round of rounds) expect(round.points.length + round.missing).toBe(12);
    }),
    { numRuns: 6, seed: 3 },
  );
}, 120_000);
