import { describe, expect, test } from 'vitest';
import type { Ladder } from '../../../src/engine/circuit/ladder.ts';
import { gainAt } from '../../../src/engine/circuit/ladderGain.ts';
import { passband } from '../../../src/engine/circuit/passband.ts';
import { finish } from '../../../src/engine/errands/drive.ts';
import { figures } from '../../../src/engine/errands/yield/buildFigures.ts';
import { blankDraws, drawBuild } from '../../../src/engine/errands/yield/drawBuild.ts';
import { factorsOf } from '../../../src/engine/errands/yield/factors.ts';
import { spreadOf } from '../../../src/engine/errands/yield/ranked.ts';
import { perfect, type Spreads } from '../../../src/engine/errands/yield/spreads.ts';
import { varied } from '../../../src/engine/errands/yield/varied.ts';
import { FRACTIONS, yieldAnswer } from '../../../src/engine/errands/yield/yieldAnswer.ts';
import { type YieldOrder, yieldShare } from '../../../src/engine/errands/yield/yieldShare.ts';
import { orderFor } from './order.ts';

const small: Spreads = {
  capacitors: 0.004,
  capacitorShape: 'even',
  frequency: 3,
  frequencyShape: 'normal',
  lm: 0.001,
  rm: 0.02,
  c0: 0.004,
  ends: 0.005,
};

const inShares = (order: YieldOrder, of: number) =>
  Array.from({ length: of }, (_, index) => finish(yieldShare(order, { index, of })));

describe('small tolerances against the propagation of errors', () => {
  // First order, any textbook of measurement (JCGM 100:2008, 5.1.2): σ² = Σ (∂W/∂x)²·σ(x)², with
  // the derivatives as differences of the passband's own root finder.
  test.each([4, 6, 8])('width of %i crystals', (n) => {
    const order = { ...orderFor(n), spreads: small, builds: 6000 };
    const width = (ladder: Ladder) => {
      const band = passband(ladder, order.around, 1e-7);
      return band.high - band.low;
    };
    const { ladder, set } = varied(order.ladder);
    const slopes = factorsOf(order.ladder).map((factor) => {
      const at = (x: number) => {
        const draws = blankDraws();
        draws[factor.draw] = x;
        set(draws, small);
        return width(ladder);
      };
      return { factor, slope: (at(0.2) - at(-0.2)) / 0.4 };
    });
    const variance = slopes.reduce((sum, { factor: { kind }, slope }) => {
      const even = kind === 'coupling' || kind === 'series' || kind === 'ends';
      return sum + slope ** 2 * (even ? 1 / 3 : 1);
    }, 0);
    const answer = yieldAnswer(inShares(order, 1));
    const found = answer.figures[0];
    // Standard error of a deviation from 6000 builds: 1/√12 000 = 0.9 %.
    expect(Math.abs((found?.deviation ?? 0) / Math.sqrt(variance) - 1)).toBeLessThan(0.03);
    expect(found?.explained).toBeGreaterThan(0.97);

    // The regression's slopes are the derivatives: each to a fiftieth of the greatest.
    const perUnit = (kind: (typeof slopes)[number]['factor']['kind'], slope: number) =>
      (slope / spreadOf(kind, small)) * (kind === 'frequency' ? 1 : 0.01);
    for (const { factor, slope } of slopes) {
      const same = found?.parts.find(
        (part) => part.kind === factor.kind && part.position === factor.position,
      );
      const alike = slopes.filter((one) => one.factor.kind === factor.kind);
      const greatest = Math.max(...alike.map((one) => Math.abs(perUnit(factor.kind, one.slope))));
      const noise = Math.abs(perUnit(factor.kind, Math.sqrt(variance) * 0.01));
      const off = Math.abs((same?.slope ?? 0) - perUnit(factor.kind, slope));
      expect(off, `${factor.kind} ${factor.position}`).toBeLessThan(greatest / 50 + noise);
    }
  });

  test('a mask one deviation wide to both sides keeps 68 %', () => {
    const base = { ...orderFor(6), spreads: small, builds: 6000 };
    const free = yieldAnswer(inShares(base, 1)).figures[0];
    const [mean, deviation] = [free?.mean ?? 0, free?.deviation ?? 0];
    const mask = { ...base.mask, widthLeast: mean - deviation, widthMost: mean + deviation };
    const answer = yieldAnswer(inShares({ ...base, mask }, 1));
    // Many small parts: a normal distribution, 68.27 %. Two standard errors are 1.2 %.
    expect(answer.yield?.share).toBeGreaterThan(0.66);
    expect(answer.yield?.share).toBeLessThan(0.705);
    expect(answer.yield?.low).toBeLessThan(0.6827);
    expect(answer.yield?.high).toBeGreaterThan(0.6827);
  });
});

const wide: Spreads = {
  ...small,
  capacitors: 0.05,
  frequency: 50,
  lm: 0.01,
  rm: 0.2,
  c0: 0.03,
  ends: 0.05,
};
const masked: YieldOrder = {
  ...orderFor(6),
  spreads: wide,
  builds: 1501,
  mask: { widthLeast: 2330, widthMost: 2470, ripple: 0.4, loss: 1.8, carrier: 12, opposite: 26 },
};

describe('shares', () => {
  const whole = yieldAnswer(inShares(masked, 1));

  test.each([2, 3])('%i shares come to just what one does', (of) => {
    expect(yieldAnswer(inShares(masked, of))).toEqual(whole);
  });

  test('the same seed gives the same builds, another one others', () => {
    expect(yieldAnswer(inShares(masked, 1))).toEqual(whole);
    const other = yieldAnswer(inShares({ ...masked, seed: 2 }, 1));
    expect(other.figures[0]?.mean).not.toBe(whole.figures[0]?.mean);
    expect(Math.abs((other.yield?.share ?? 0) - (whole.yield?.share ?? 0))).toBeLessThan(0.06);
  });

  test('more builds begin with the same ones', () => {
    const [few] = inShares({ ...masked, builds: 100 }, 1);
    const [more] = inShares({ ...masked, builds: 200 }, 1);
    expect(more?.found.slice(0, few?.found.length)).toEqual(few?.found);
  });

  test('progress rises to its end and never past it', () => {
    const work = yieldShare({ ...masked, builds: 600 }, { index: 1, of: 2 });
    let last = 0;
    for (let step = work.next(); !step.done; step = work.next()) {
      expect(step.value).toBeGreaterThan(last);
      expect(step.value).toBeLessThanOrEqual(1);
      last = step.value;
    }
    expect(last).toBeGreaterThan(0.9);
  });
});

describe('what is counted', () => {
  const [tally] = inShares(masked, 1);
  const answer = yieldAnswer(tally ? [tally] : []);
  const builds = masked.builds;
  const figure = (k: number) =>
    [...Array(builds).keys()].map((i) => tally?.found[i * figures.length + k] ?? Number.NaN);

  test('yield and failures are those of a plain count', () => {
    const [width, ripple, loss, carrier, opposite] = [0, 1, 2, 3, 4].map(figure) as [
      number[],
      number[],
      number[],
      number[],
      number[],
    ];
    const breaks = [...Array(builds).keys()].map((i) => [
      (width[i] ?? 0) < 2330,
      (width[i] ?? 0) > 2470,
      (ripple[i] ?? 0) > 0.4,
      (loss[i] ?? 0) > 1.8,
      (carrier[i] ?? 0) < 12,
      (opposite[i] ?? 0) < 26,
    ]);
    const good = breaks.filter((one) => !one.includes(true)).length;
    expect(answer.yield?.share).toBe(good / builds);
    answer.criteria.forEach(({ fails, alone }, k) => {
      expect(fails).toBe(breaks.filter((one) => one[k]).length);
      expect(alone).toBe(breaks.filter((one) => one[k] && one.filter(Boolean).length === 1).length);
    });
    expect(good).toBeGreaterThan(builds / 10);
    expect(good).toBeLessThan(builds * 0.9);
  });

  test('histograms hold every build once', () => {
    for (const { histogram } of answer.figures) {
      const { counts, below, above } = histogram;
      expect(counts.reduce((sum, one) => sum + one, below + above)).toBe(builds);
    }
  });

  test('the envelope lies where sorting puts it, to a sixteenth of a decibel', () => {
    const points = [10, 40, 100, 160, 190];
    const gains = points.map((): number[] => []);
    const { ladder, set } = varied(masked.ladder);
    const draws = blankDraws();
    const factors = factorsOf(masked.ladder);
    for (let i = 0; i < builds; i += 1) {
      drawBuild(masked.seed, i, factors, wide, draws);
      set(draws, wide);
      points.forEach((point, k) => {
        gains[k]?.push(gainAt(ladder, answer.frequency[point] ?? 0));
      });
    }
    points.forEach((point, k) => {
      const sorted = (gains[k] ?? []).sort((a, b) => a - b);
      FRACTIONS.forEach((fraction, q) => {
        const exact = sorted[Math.round(fraction * (builds - 1))] ?? 0;
        expect(Math.abs((answer.envelope[q]?.[point] ?? 0) - exact)).toBeLessThan(1 / 16);
      });
    });
  });

  test('perfect parts bring at least as much, and all together everything', () => {
    for (const { chance } of answer.perfect) {
      expect(chance.share).toBeGreaterThan((answer.yield?.share ?? 0) - 0.05);
    }
    const none = yieldAnswer(inShares({ ...masked, spreads: perfect, builds: 100 }, 1));
    expect(none.yield?.share).toBe(1);
    expect(none.figures[0]?.deviation).toBeLessThan(1e-6);
    expect(none.figures[0]?.parts).toEqual([]);
  });

  test('the tolerance that is enough gives just the yield asked for', () => {
    const order = { ...masked, spreads: { ...wide, frequency: 10, lm: 0.002, ends: 0.01 } };
    const goal = yieldAnswer(inShares(order, 1)).capacitors?.enough[0];
    expect(goal).toBeGreaterThan(0.001);
    const spreads = { ...order.spreads, capacitors: goal ?? 0 };
    const again = yieldAnswer(inShares({ ...order, spreads, builds: 3000 }, 1));
    expect(Math.abs((again.yield?.share ?? 0) - 0.9)).toBeLessThan(0.03);
  });
});

describe('carrier', () => {
  test('without one nothing is said of it, and it fails nothing', () => {
    const answer = yieldAnswer(inShares({ ...masked, carrier: null, builds: 200 }, 2));
    expect(answer.figures.map(({ name }) => name)).toEqual(['width', 'ripple', 'loss']);
    expect(answer.criteria.map(({ name }) => name)).not.toContain('carrier');
  });
});
