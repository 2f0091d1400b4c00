import { describe, expect, test } from 'vitest';
import { buy, type LotLike } from '../../src/engine/errands/choose/buy.ts';
import { finish } from '../../src/engine/errands/drive.ts';

const TRIALS = 20_000;
const chances = (set: number, window: number, lot: LotLike, trials = TRIALS) =>
  finish(buy({ set, window, confidence: 0.9 }, lot, 3, trials)).chances;
const normal = (spread: number): LotLike => ({ kind: 'normal', spread });
/** Three standard errors of a share found in so many trials. */
const doubt = (p: number, trials = TRIALS) => 3 * Math.sqrt((p * (1 - p)) / trials) + 1e-4;

/** Standard normal distribution. Abramowitz and Stegun, Handbook, 1964, 26.2.17: to 7.5e-8. */
function phi(x: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(x));
  const poly =
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)) * poly;
  return x < 0 ? tail : 1 - tail;
}

/** P(range of n normals ≤ w) = n∫φ(x)(Φ(x + w) − Φ(x))ⁿ⁻¹dx: David, Order Statistics, 1981, 2.3. */
function rangeWithin(n: number, w: number): number {
  let sum = 0;
  const step = 0.005;
  for (let x = -8; x < 8; x += step) {
    sum += Math.exp((-x * x) / 2) * (phi(x + w) - phi(x)) ** (n - 1);
  }
  return (n * sum * step) / Math.sqrt(2 * Math.PI);
}

describe('closed forms', () => {
  // The difference of two normals has √2 of their deviation.
  test.each([0.2, 1, 2.5])('two of two within %f deviations', (w) => {
    const p = 2 * phi(w / Math.SQRT2) - 1;
    expect(Math.abs((chances(2, 100 * w, normal(100))[1] ?? 0) - p)).toBeLessThan(doubt(p));
  });

  test.each([
    [4, 1],
    [6, 2],
    [8, 3],
  ])('all of %i within %f deviations', (n, w) => {
    const p = rangeWithin(n, w);
    expect(Math.abs((chances(n, 100 * w, normal(100))[n - 1] ?? 0) - p)).toBeLessThan(doubt(p));
  });

  // None of N even draws nearer than w to another: (1 − (N − 1)w)ᴺ. David, Order Statistics, 1981,
  // 5.4. An own lot of very many evenly spaced crystals is even; the blur reaches past its ends a
  // little, so its inside is compared within 0.02.
  test('pairs in an even lot', () => {
    const lot: LotLike = {
      kind: 'own',
      frequencies: Array.from({ length: 20_000 }, (_, i) => (i + 0.5) / 20),
    };
    const found = chances(2, 10, lot);
    for (const n of [3, 6, 10, 15]) {
      const p = 1 - (1 - (n - 1) * 0.01) ** n;
      expect(Math.abs((found[n - 1] ?? 0) - p), `${n}`).toBeLessThan(0.02);
    }
  });
});

// Chances of finding a set, worked by simulation for the design notes of this program: an anchor
// from another program, printed with two digits; allowed ±0.02 and half of the last digit.
describe('table of chances', () => {
  test.each([
    [60, 10, [0.31, 0.96, 1, 0.97]],
    [120, 10, [0.03, 0.32, 0.99, 0.54]],
    [120, 20, [0.67, 1, 1, 1]],
    [120, 30, [1, 1, 1, 1]],
    [200, 20, [0.18, 0.84, 1, 0.93]],
    [200, 30, [0.73, 1, 1, 1]],
    [200, 50, [1, 1, 1, 1]],
    [300, 20, [0.04, 0.4, 1, 0.64]],
    [300, 30, [0.28, 0.95, 1, 0.98]],
    [300, 50, [0.96, 1, 1, 1]],
  ])('spread %i Hz, lot of %i', (spread, lot, wanted) => {
    const sets = [
      [6, 50],
      [6, 100],
      [6, 240],
      [4, 50],
    ] as const;
    const found = sets.map(([set, window]) => chances(set, window, normal(spread), 6000)[lot - 1]);
    for (const [i, p] of wanted.entries()) {
      expect(Math.abs((found[i] ?? 0) - p), `${sets[i]}`).toBeLessThan(0.025);
    }
  });
});

test('the number to buy is the first lot that is sure enough, and the seed decides all', () => {
  const order = { set: 6, window: 100, confidence: 0.9 };
  const one = finish(buy(order, normal(200), 5));
  expect(one.chances[(one.number ?? 0) - 1]).toBeGreaterThanOrEqual(0.9);
  expect(one.chances[(one.number ?? 0) - 2]).toBeLessThan(0.9);
  expect(finish(buy(order, normal(200), 5))).toEqual(one);
  expect(finish(buy({ ...order, window: 0.01 }, normal(300), 5, 50)).number).toBeNull();
});

test('a lot of two humps is drawn with two humps', () => {
  const frequencies = [...Array(15).keys()].flatMap((i) => [3 * i, 3000 + 3 * i]);
  const own = chances(4, 60, { kind: 'own', frequencies }, 4000);
  const spread = 1500;
  const asOne = chances(4, 60, normal(spread), 4000);
  // Seven crystals have four in one of the humps, whatever falls where.
  expect(own[9]).toBeGreaterThan(0.5);
  expect(asOne[9]).toBeLessThan(0.2);
});
