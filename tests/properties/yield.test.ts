import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { finish } from '../../src/engine/errands/drive.ts';
import { pick, seenBy } from '../../src/engine/errands/pick.ts';
import { yieldErrand } from '../../src/engine/errands/yield/errand.ts';
import { type Rig, withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';
import { yieldReads } from '../../src/engine/stages/yield/reads.ts';
import type { YieldSeen } from '../../src/engine/stages/yield/seen.ts';
import { workYield } from '../../src/engine/stages/yield/work.ts';
import { inputFields, textFor } from '../laws/randomRig.ts';

const first = examples[0] as Rig;
const said = (rig: Rig, texts: Readonly<Record<string, string>>) =>
  Object.entries(texts).reduce((now, [path, text]) => withEntry(now, path, text), rig);
const worked = (rig: Rig) => createEvaluator(stages)(rig);

/** The stage's own view of a rig, to be changed a little. */
function seenOf(rig: Rig): YieldSeen {
  const all = worked(rig);
  return Object.fromEntries(
    Object.entries(yieldReads).map(([name, path]) => [name, valueAt(all, path.replace(/\?$/, ''))]),
  ) as unknown as YieldSeen;
}

function built(rig: Rig, shares = 1) {
  const seen = seenBy(yieldErrand, pick(worked(rig), yieldErrand));
  if (seen === null) return null;
  const parts = Array.from({ length: shares }, (_, index) =>
    finish(yieldErrand.work(seen, { index, of: shares })),
  );
  return yieldErrand.merge(parts);
}

describe('which spread counts', () => {
  test('the bag’s, while all crystals are alike', () => {
    const { results } = workYield(seenOf(first));
    expect(results.basis).toBe('alike');
    expect(results.spreadUsed).toBe(50);
  });

  test('the error of measuring, once each place has its own', () => {
    const seen = seenOf(first);
    const cm = seen.ladder.cm.map((c, i) => c * (1 + 1e-6 * i));
    const { results } = workYield({ ...seen, ladder: { ...seen.ladder, cm } });
    expect(results.basis).toBe('chosen');
    expect(results.spreadUsed).toBe(5);
    // An even window of √12 standard deviations; for a normal spread 95 % lie within ±1.96.
    expect(results.window).toBeCloseTo(5 * 3.92, 1);
    const even = workYield({ ...seen, frequencyShape: 'even' });
    expect(even.results.window).toBeCloseTo(50 * Math.sqrt(12), 6);
  });
});

describe('a mask asked in vain is said to be so', () => {
  test.each([
    ['yield.widthLeast', '2450', /2400\sHz wide/],
    ['yield.widthMost', '2350', /2400\sHz wide/],
    ['yield.lossMost', '1', /loses 1\.\d\sdB/],
    ['yield.carrierLeast', '30', /carrier is 20\.0\sdB down/],
    ['yield.oppositeLeast', '50', /other sideband is 3\d\.\d\sdB down/],
  ])('%s of %s', (path, text, says) => {
    const { problems } = worked(
      said(first, { 'yield.widthLeast': '', 'yield.widthMost': '', [path]: text }),
    ).stages.yield ?? { problems: [] };
    expect(problems.map(({ field }) => field)).toEqual([path]);
    expect(problems[0]?.says).toMatch(says);
  });
});

describe('the errand', () => {
  test('waits while there is no filter', () => {
    expect(built(said(first, { 'filter.stray': '19p', 'filter.bandwidth': '6k' }))).toBeNull();
    expect(built(said(first, { 'yield.tolerance': 'much' }))).toBeNull();
  });

  test('on two workers comes to just what it does on one', () => {
    const rig = said(first, { 'yield.builds': '500', 'yield.carrierLeast': '15' });
    expect(built(rig, 2)).toEqual(built(rig, 1));
  });

  test('answers in finite numbers, whatever is typed', () => {
    const paths = inputFields.filter(([path]) => /^(yield|filter|quartz|carrier)\./.test(path));
    const edit = fc
      .constantFrom(...paths)
      .chain(([path, field]) => textFor(field).map((text) => [path, text] as const));
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 8 }), (edits) => {
        const rig = said(first, { ...Object.fromEntries(edits), 'yield.builds': '200' });
        const answer = built(rig, 2);
        if (answer === null) return;
        for (const figure of answer.figures) {
          const { wanted, mean, deviation, low, middle, high, histogram, parts } = figure;
          for (const one of [wanted, mean, deviation, low, middle, high, histogram.from]) {
            expect(Number.isFinite(one), figure.name).toBe(true);
          }
          expect(low).toBeLessThanOrEqual(middle);
          expect(middle).toBeLessThanOrEqual(high);
          for (const { share } of parts) expect(share).toBeGreaterThanOrEqual(0);
          expect(
            histogram.counts.reduce((sum, one) => sum + one, histogram.below + histogram.above),
          ).toBe(200);
        }
        answer.envelope.forEach((line, k) => {
          line.forEach((gain, i) => {
            expect(Number.isFinite(gain)).toBe(true);
            expect(gain).toBeGreaterThanOrEqual(answer.envelope[k - 1]?.[i] ?? -1e9);
          });
        });
        const { yield: found } = answer;
        if (found) expect(found.low <= found.share && found.share <= found.high).toBe(true);
      }),
      { numRuns: 40 },
    );
  });
});
