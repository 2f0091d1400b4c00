import { describe, expect, test } from 'vitest';
import { couplings } from '../../src/engine/circuit/couplings.ts';
import { crystalOf } from '../../src/engine/circuit/crystal.ts';
import { envelopeStep, stepOf } from '../../src/engine/circuit/envelopeStep.ts';
import { fft } from '../../src/engine/circuit/fft.ts';
import { ladderForWidth } from '../../src/engine/circuit/ladderForWidth.ts';
import { stepFigures } from '../../src/engine/circuit/stepFigures.ts';

describe('the transform', () => {
  test('is the sum that defines it', () => {
    const n = 32;
    const re = Float64Array.from({ length: n }, (_, i) => Math.sin(i * i));
    const im = Float64Array.from({ length: n }, (_, i) => Math.cos(3 * i * i));
    const [a, b] = [re.slice(), im.slice()];
    fft(a, b);
    for (let k = 0; k < n; k += 1) {
      let [sumRe, sumIm] = [0, 0];
      for (let i = 0; i < n; i += 1) {
        const angle = (-2 * Math.PI * k * i) / n;
        sumRe += (re[i] ?? 0) * Math.cos(angle) - (im[i] ?? 0) * Math.sin(angle);
        sumIm += (re[i] ?? 0) * Math.sin(angle) + (im[i] ?? 0) * Math.cos(angle);
      }
      expect(a[k]).toBeCloseTo(sumRe, 11);
      expect(b[k]).toBeCloseTo(sumIm, 11);
    }
  });

  test('and back gives the same again', () => {
    const re = Float64Array.from({ length: 1024 }, (_, i) => Math.sin(i * i));
    const im = new Float64Array(1024);
    const before = re.slice();
    fft(re, im);
    fft(re, im, true);
    before.forEach((one, i) => {
      expect((re[i] ?? 0) / 1024).toBeCloseTo(one, 12);
    });
  });
});

describe('the step of a low-pass', () => {
  // n equal poles at −a: 1 − e^(−at)·Σ (at)^k/k!, any table of Laplace transforms.
  test.each([2, 3, 5])('of %i equal poles', (n) => {
    const points = 4096;
    const span = 400;
    const re = new Float64Array(points);
    const im = new Float64Array(points);
    for (let i = 0; i < points; i += 1) {
      const f = (span * (i < points / 2 ? i : i - points)) / points;
      // 1/(1 + jf)^n
      const size = (1 + f * f) ** (-n / 2);
      const angle = -n * Math.atan(f);
      re[i] = size * Math.cos(angle);
      im[i] = size * Math.sin(angle);
    }
    const level = stepOf(re, im);
    for (let i = 0; i < 1500; i += 7) {
      const x = (2 * Math.PI * i) / span;
      let sum = 0;
      let term = 1;
      for (let k = 0; k < n; k += 1) {
        sum += term;
        term *= x / (k + 1);
      }
      // The span cuts off what lies beyond 200 times the edge.
      expect(Math.abs((level[i] ?? 0) - (1 - Math.exp(-x) * sum))).toBeLessThan(2e-4);
    }
  });
});

describe('the envelope of a crystal filter', () => {
  const bare = { capacitorQ: Number.POSITIVE_INFINITY, stray: 0 };
  const ladderOf = (n: number) => {
    // A crystal without loss and with hardly a holder (20 fF): the band-pass is the low-pass moved up.
    const crystal = crystalOf(9e6, 14e-3, 1e9, 2e-14);
    const made = ladderForWidth(crystal, couplings('butterworth', n, 0.1), bare, 2400);
    const { low, high } = made.band;
    return envelopeStep(made.ladder, (low + high) / 2, high - low);
  };

  // Two Butterworth poles at 1200 Hz: 1 − e^(−x)(cos x + sin x), x = 2π·1200·t/√2.
  test('of two crystals is that of a second-order Butterworth low-pass', () => {
    const { time, level } = ladderOf(2);
    for (let i = 0; i < time.length; i += 5) {
      const x = (2 * Math.PI * 1200 * (time[i] ?? 0)) / Math.SQRT2;
      const exact = 1 - Math.exp(-x) * (Math.cos(x) + Math.sin(x));
      expect(Math.abs((level[i] ?? 0) - exact)).toBeLessThan(0.003);
    }
  });

  // Overshoot of Butterworth low-passes: 4.3 %, 8.1 %, 10.9 %, 14.3 % for orders 2, 3, 4, 6; rise
  // time from 10 to 90 % times the edge in rad/s: 2.15, 2.29, 2.43, 2.68 or nearly so.
  // A. I. Zverev, Handbook of Filter Synthesis, 1967, step responses; from memory.
  test.each([
    [2, 0.043, 2.15],
    [3, 0.081, 2.29],
    [4, 0.109, 2.43],
    [6, 0.143, 2.68],
  ])('%i crystals overshoot by %f', (n, overshoot, rise) => {
    const found = stepFigures(ladderOf(n));
    expect(Math.abs(found.overshoot - overshoot)).toBeLessThan(0.004);
    expect(Math.abs(found.rise * 2 * Math.PI * 1200 - rise)).toBeLessThan(0.05);
    expect(found.delay).toBeGreaterThan(0);
    expect(found.settled).toBeGreaterThan(found.rise);
  });
});
