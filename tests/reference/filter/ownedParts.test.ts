import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { couplings } from '../../../src/engine/circuit/couplings.ts';
import { crystalOf } from '../../../src/engine/circuit/crystal.ts';
import { ladderForWidth } from '../../../src/engine/circuit/ladderForWidth.ts';
import { fitParts } from '../../../src/engine/stages/filter/fitParts.ts';
import { ownedParts } from '../../../src/engine/stages/filter/ownedParts.ts';
import { wantedResponse } from '../../../src/engine/stages/filter/wantedResponse.ts';

// Source: what the words mean; styles as people write them (common practice, no source).
describe('a list of owned capacitors', () => {
  test.each([
    ['100p 5, 82p x3, 47p', [47, 1, 82, 3, 100, 5]],
    ['4,7n 3; 2 x 33p\n100 pF 12', [33, 2, 100, 12, 4700, 3]],
    ['82p×3,47p,1n', [47, 1, 82, 3, 1000, 1]],
    ['100 5', [100, 5]],
    ['100, 82, 47', [47, 1, 82, 1, 100, 1]],
    ['1n0 x 2, 4p7', [4.7, 1, 1000, 2]],
    ['68p 10 pcs', [68, 10]],
    ['3x82p, 82p x 3 # the mica ones', [82, 6]],
    ['', []],
  ])('%j', (text, pairs) => {
    const { parts, wrong } = ownedParts(text);
    const flat = parts.flatMap(({ value, count }) => [
      Number((value * 1e12).toPrecision(9)),
      count,
    ]);
    expect(flat).toEqual(pairs);
    expect(wrong).toEqual([]);
  });

  test.each(['abc', '10 ohms', '5 F', '0x82p', '-3p', '82p 100000'])(
    '%s is put in words',
    (text) => {
      const { parts, wrong } = ownedParts(`100p 2, ${text}, 47p`);
      expect(parts.map(({ count }) => count)).toEqual([1, 2]);
      expect(wrong).toHaveLength(1);
    },
  );

  test('anything at all is either a capacitor or put in words', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), (text) => {
        const { parts, wrong } = ownedParts(text);
        for (const { value, count } of parts) {
          expect(value > 0 && value <= 1e-6 && Number.isInteger(count) && count > 0).toBe(true);
        }
        for (const says of wrong) expect(says).not.toMatch(/NaN|undefined|Infinity/);
      }),
    );
  });
});

const { ladder, band } = ladderForWidth(
  crystalOf(9e6, 14e-3, 100e3, 3.5e-12),
  couplings('chebyshev', 6, 0.1),
  { capacitorQ: 2000, stray: 1e-12 },
  2400,
);
const wanted = wantedResponse(ladder, band);
const fitted = (text: string) => fitParts(ladder, wanted, 'own', ownedParts(text).parts);
const used = (text: string) => {
  const parts = fitted(text);
  return [...parts.coupling, ...parts.series].flatMap((one) => one?.chosen.parts ?? []);
};

// Source: counting.
describe('fitting what is owned', () => {
  const box = fc
    .array(fc.tuple(fc.integer({ min: 10, max: 600 }), fc.integer({ min: 1, max: 4 })), {
      minLength: 1,
      maxLength: 20,
    })
    .map((rows) => rows.map(([pF, count]) => `${pF}p ${count}`).join(', '));

  test('none is used oftener than it is there, and never more than two at a place', () => {
    fc.assert(
      fc.property(box, (text) => {
        const owned = new Map(ownedParts(text).parts.map(({ value, count }) => [value, count]));
        const parts = fitted(text);
        for (const part of used(text)) {
          const left = (owned.get(part) ?? 0) - 1;
          expect(left).toBeGreaterThanOrEqual(0);
          owned.set(part, left);
        }
        for (const one of [...parts.coupling, ...parts.series]) {
          expect(one?.chosen.parts.length ?? 0).toBeLessThanOrEqual(2);
        }
        // As many places stay bare as there are too few capacitors.
        const all = [...ownedParts(text).parts].reduce((sum, { count }) => sum + count, 0);
        const places = ladder.coupling.length + ladder.series.filter((c) => c > 0).length;
        expect(parts.missing).toBe(Math.max(0, places - all));
        expect(parts.sums.chosen).toBeLessThanOrEqual(parts.sums.nearest * (1 + 1e-12));
      }),
      { numRuns: 60 },
    );
  });

  test('with plenty of E12 values it comes out as well as from the shop', () => {
    const plenty = [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82]
      .flatMap((value) => [value, value * 10])
      .map((pF) => `${pF}p 20`)
      .join(', ');
    const shop = fitParts(ladder, wanted, 'e12', []).sums.chosen;
    expect(fitted(plenty).sums.chosen).toBeLessThanOrEqual(shop);
  });

  test('the only values there are find their places', () => {
    const exact = [...ladder.coupling, ...ladder.series].filter((c) => c > 0);
    const text = exact.map((c) => `${(c * 1e12).toPrecision(12)}p`).join(', ');
    expect(fitted(text).sums.chosen).toBeLessThan(1e-12);
  });
});
