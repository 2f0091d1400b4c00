import { describe, expect, test } from 'vitest';
import { chance } from '../../../src/engine/errands/yield/chance.ts';
import { blankDraws, drawBuild } from '../../../src/engine/errands/yield/drawBuild.ts';
import type { Factor } from '../../../src/engine/errands/yield/factors.ts';
import { normalQuantile } from '../../../src/engine/errands/yield/normalQuantile.ts';
import { perfect, type Spreads } from '../../../src/engine/errands/yield/spreads.ts';
import { threefry } from '../../../src/engine/errands/yield/threefry.ts';

describe('the generator', () => {
  // Known answers of threefry2x32, 20 rounds, published with the paper's own code (Random123,
  // kat_vectors; from memory, quoted alike in the tests of other numerical libraries).
  test.each([
    [0, 0, 0, 0, 0x6b200159, 0x99ba4efe],
    [-1, -1, -1, -1, 0x1cb996fc, 0xbb002be7],
    [0x13198a2e, 0x03707344, 0x243f6a88, 0x85a308d3, 0xc4923a9c, 0x483df7a0],
  ])('key %i %i, counter %i %i', (key0, key1, counter0, counter1, a, b) => {
    const out = new Uint32Array(2);
    threefry(key0, key1, counter0, counter1, out);
    expect([...out]).toEqual([a, b]);
  });
});

describe('the normal distribution', () => {
  // Any table of the normal distribution, e.g. Abramowitz & Stegun, table 26.5 and 26.6.
  test.each([
    [0.5, 0],
    [0.75, 0.6744898],
    [0.9, 1.2815516],
    [0.975, 1.959964],
    [0.995, 2.5758293],
    [0.9995, 3.2905267],
    [0.00003167, -3.99999],
  ])('%f of it lies below %f', (p, z) => {
    expect(normalQuantile(p)).toBeCloseTo(z, 4);
    expect(normalQuantile(1 - p)).toBeCloseTo(-z, 4);
  });
});

describe('draws', () => {
  const one: Factor[] = [
    { kind: 'coupling', position: 0, draw: 0 },
    { kind: 'frequency', position: 1, draw: 33 },
    { kind: 'rm', position: 5, draw: 69 },
  ];
  const N = 20_000;
  const moments = (spreads: Spreads, at: number) => {
    const x = blankDraws();
    let sum = 0;
    let square = 0;
    let most = 0;
    for (let i = 0; i < N; i += 1) {
      drawBuild(7, i, one, spreads, x);
      sum += x[at] ?? 0;
      square += (x[at] ?? 0) ** 2;
      most = Math.max(most, Math.abs(x[at] ?? 0));
    }
    return { mean: sum / N, variance: square / N, most };
  };
  // Closed forms. Truncated normal: 1 − 2cφ(c)/(2Φ(c) − 1) with c = 2, over the square of the 2σ
  // that the tolerance stands for. Four standard errors are allowed: 4/√20 000 = 0.03.
  const phi = Math.exp(-2) / Math.sqrt(2 * Math.PI);
  test.each([
    ['capacitors, even', perfect, 0, 1 / 3, 1],
    [
      'capacitors, normal',
      { ...perfect, capacitorShape: 'normal' as const },
      0,
      (1 - (4 * phi) / 0.9544997) / 4,
      1,
    ],
    ['frequency, normal', perfect, 33, 1, 6],
    ['frequency, even', { ...perfect, frequencyShape: 'even' as const }, 33, 1, Math.sqrt(3)],
    ['resistance', perfect, 69, 1, 6],
  ])('%s', (_, spreads, at, variance, most) => {
    const found = moments(spreads, at);
    expect(Math.abs(found.mean)).toBeLessThan(0.03);
    expect(Math.abs(found.variance / variance - 1)).toBeLessThan(0.05);
    expect(found.most).toBeLessThanOrEqual(most);
    expect(found.most).toBeGreaterThan(most === 6 ? 3.5 : most * 0.99);
  });
});

describe('the uncertainty of a yield', () => {
  // R. G. Newcombe, Two-sided confidence intervals for the single proportion, Statistics in Medicine
  // 17, 1998, table I, method 3 (Wilson's score without continuity correction).
  test.each([
    [81, 263, 0.2553, 0.3662],
    [15, 148, 0.0624, 0.1605],
    [0, 20, 0, 0.1611],
    [1, 29, 0.0061, 0.1718],
  ])('%i of %i', (hits, trials, low, high) => {
    const found = chance(hits, trials);
    expect(found.low).toBeCloseTo(low, 4);
    expect(found.high).toBeCloseTo(high, 4);
  });
});
