import { describe, expect, test } from 'vitest';
import { couplingLoss, couplings } from '../../../src/engine/circuit/couplings.ts';
import { butterworth, chebyshev } from '../../../src/engine/circuit/prototype.ts';

const young = 'Matthaei, Young & Jones, Microwave Filters, 1964, tables 4.05';

// The printed tables round to their last digit: half a unit of it is allowed and no more.
const half = 0.5000001e-4;

describe('element values', () => {
  test.each([
    [5, [0.618, 1.618, 2.0, 1.618, 0.618]],
    [8, [0.3902, 1.1111, 1.6629, 1.9616]],
  ])(`Butterworth of %i (${young})`, (n, printed) => {
    const { g, halfPower } = butterworth(n);
    printed.forEach((value, i) => {
      expect(Math.abs((g[i + 1] ?? 0) - value)).toBeLessThanOrEqual(half);
    });
    expect(halfPower).toBe(1);
  });

  // ripple dB, n, g1 …, load, half power over ripple edge
  test.each([
    [0.01, 5, [0.7563, 1.3049, 1.5773, 1.3049, 0.7563], 1, 1.29122],
    [0.1, 3, [1.0316, 1.1474, 1.0316], 1, 1.38899],
    [0.1, 4, [1.1088, 1.3062, 1.7704, 0.8181], 1.3554, 1.2131],
    [0.1, 6, [1.1681, 1.404, 2.0562, 1.5171, 1.9029, 0.8618], 1.3554, 1.09293],
    [0.1, 7, [1.1812, 1.4228, 2.0967, 1.5734, 2.0967, 1.4228, 1.1812], 1, 1.068],
    [0.5, 5, [1.7058, 1.2296, 2.5408, 1.2296, 1.7058], 1, 1.05926],
    [1.0, 7, [2.1666, 1.1115, 3.0936, 1.1735, 3.0936, 1.1115, 2.1666], 1, 1.01721],
  ])(`Chebyshev of %f dB and %i (${young})`, (ripple, n, printed, load, ratio) => {
    const { g, halfPower } = chebyshev(n, ripple);
    printed.forEach((value, i) => {
      expect(Math.abs((g[i + 1] ?? 0) - value)).toBeLessThanOrEqual(half);
    });
    expect(Math.abs((g[n + 1] ?? 0) - load)).toBeLessThanOrEqual(half);
    expect(Math.abs(halfPower - ratio)).toBeLessThanOrEqual(0.5000001e-5);
  });
});

describe('coupling and end Q at half power', () => {
  const zverev = 'Zverev p. 341 as reproduced by Kikkert, RF Electronics';
  test.each([
    ['butterworth', 4, 0, 0.7654, [0.8409, 0.5412, 0.8409], zverev],
    ['butterworth', 5, 0, 0.618, [1, 0.5559, 0.5559, 1], zverev],
    ['chebyshev', 6, 0.1, 1.2767, [0.7145, 0.5385, 0.518], 'closed form from the tables of g'],
  ] as const)('%s of %i, %f dB', (family, n, ripple, q, k, _source) => {
    const found = couplings(family, n, ripple);
    expect(Math.abs(found.qSource - q)).toBeLessThanOrEqual(half);
    expect(Math.abs(found.qLoad - q)).toBeLessThanOrEqual(half);
    k.forEach((value, i) => {
      expect(Math.abs((found.k[i] ?? 0) - value)).toBeLessThanOrEqual(half);
    });
  });
});

describe('loss of the lossless chain', () => {
  // Source: closed forms of the families: 1 + w^2n; 1 + e²·T²(w); for all g equal to 1
  // T²(w/2) + U²(w/2) of orders n and n − 1, by the recursion of Chebyshev's polynomials.
  const chebyshevT = (n: number, x: number): number =>
    Math.abs(x) <= 1
      ? Math.cos(n * Math.acos(x))
      : Math.sign(x) ** n * Math.cosh(n * Math.acosh(Math.abs(x)));
  const chebyshevU = (n: number, x: number): number => {
    let [before, now] = [0, 1];
    for (let i = 0; i < n; i += 1) [before, now] = [now, 2 * x * now - before];
    return now;
  };
  const loss = (ratio: number) => 10 * Math.log10(ratio);

  test.each([2, 3, 4, 5, 8, 12])('%i resonators', (n) => {
    for (const w of [0, 0.2, 0.5, 0.77, 0.95, 1, 1.3, 2, 3.5]) {
      expect(couplingLoss(couplings('butterworth', n, 0), w)).toBeCloseTo(
        loss(1 + w ** (2 * n)),
        9,
      );
      for (const ripple of [0.001, 0.1, 1, 3]) {
        const edge = chebyshev(n, ripple).halfPower;
        const square = (10 ** (ripple / 10) - 1) * chebyshevT(n, w * edge) ** 2;
        expect(couplingLoss(couplings('chebyshev', n, ripple), w)).toBeCloseTo(loss(1 + square), 8);
      }
      const equal = couplings('equal', n, 0);
      const x = w / (equal.k[0] ?? 1) / 2;
      expect(couplingLoss(equal, w)).toBeCloseTo(
        loss(chebyshevT(n, x) ** 2 + chebyshevU(n - 1, x) ** 2),
        8,
      );
    }
  });
});
