import { describe, expect, test } from 'vitest';
import { couplings, type Family } from '../../../src/engine/circuit/couplings.ts';
import { crystalOf, parallelResonance } from '../../../src/engine/circuit/crystal.ts';
import { crystalLadder, largestSum } from '../../../src/engine/circuit/crystalLadder.ts';
import { between } from '../../../src/engine/circuit/ladder.ts';
import { ladderForWidth } from '../../../src/engine/circuit/ladderForWidth.ts';
import { gainAt } from '../../../src/engine/circuit/ladderGain.ts';
import { passband } from '../../../src/engine/circuit/passband.ts';
import { halfSpanFor, spanAt, spanFrequencies } from '../../../src/engine/circuit/reactanceSpan.ts';
import { slowGain, slowWidth } from './slowLadder.ts';

const lossless = { capacitorQ: Number.POSITIVE_INFINITY, stray: 0 };

function design(
  fs: number,
  lm: number,
  c0: number,
  n: number,
  family: Family,
  ripple: number,
  width: number,
  qu: number,
) {
  const crystal = crystalOf(fs, lm, qu, c0);
  const chain = couplings(family, n, ripple);
  const h = halfSpanFor(crystal, largestSum(chain), width) ?? Number.NaN;
  const span = spanAt(crystal, largestSum(chain), h);
  const ladder = crystalLadder(crystal, chain, h, lossless);
  const around = spanFrequencies(crystal, largestSum(chain), h, n, 0.5);
  return { crystal, chain, h, span, ladder, around, band: passband(ladder, around) };
}

// Source: an independent circuit solver (lossless; B is the −3 dB width asked for).
describe('the reactance method against an independent solver', () => {
  test.each([
    [
      3.686e6,
      0.13,
      4e-12,
      6,
      'chebyshev',
      0.1,
      2400,
      3023,
      [15.65, 20.76, 21.58, 20.76, 15.65],
      2398,
    ],
    [
      9e6,
      14.5e-3,
      3.8e-12,
      8,
      'chebyshev',
      0.5,
      2500,
      145,
      [104.1, 128.4, 133.1, 134.1, 133.1, 128.4, 104.1],
      2499,
    ],
    [14.316e6, 7.5e-3, 3e-12, 4, 'butterworth', 0, 2700, 184, [93.92, 145.9, 93.92], 2697],
    [
      7.2e6,
      30e-3,
      4e-12,
      6,
      'chebyshev',
      0.1,
      2400,
      448,
      [54.03, 71.68, 74.51, 71.68, 54.03],
      null,
    ],
  ] as const)(
    '%f Hz, %f H, %f F, %i %s %f dB, %i Hz',
    (fs, lm, c0, n, family, ripple, b, r, c, width) => {
      const { ladder, band, span } = design(fs, lm, c0, n, family, ripple, b, 1e12);
      // The table gives ends to the ohm: half an ohm, or 0.1 %.
      for (const end of [ladder.source[0], ladder.load[0]]) {
        expect(Math.abs(end - r)).toBeLessThanOrEqual(Math.max(0.5, r * 1e-3));
      }
      c.forEach((pF, i) => {
        expect(Math.abs((ladder.coupling[i] ?? 0) / (pF * 1e-12) - 1)).toBeLessThanOrEqual(1e-3);
      });
      const found = band.high - band.low;
      expect(Math.abs(found / (width ?? b) - 1)).toBeLessThanOrEqual(3e-3);
      expect(
        Math.abs(slowWidth(ladder, span.low - b / 2, span.high + b / 2) / found - 1),
      ).toBeLessThan(1e-5);
    },
  );

  test('Qu 70 000 on the last one: 2282 Hz wide, loses 1.8 dB', () => {
    const { band } = design(7.2e6, 30e-3, 4e-12, 6, 'chebyshev', 0.1, 2400, 70_000);
    expect(Math.abs(band.high - band.low - 2282)).toBeLessThanOrEqual(1);
    expect(Math.abs(-band.gain - 1.8)).toBeLessThanOrEqual(0.05);
  });

  test('the plain recipe misses: 2400 Hz asked for, 800 Hz less come out', () => {
    // The solver's figure was near 1575 Hz, and how the meshes were aligned isn't known; here 1628 Hz
    // with the reactance method's series capacitors and 1675 Hz without any. A disagreement of 4 %,
    // left standing.
    const crystal = crystalOf(3.686e6, 0.13, 1e12, 4e-12);
    const chain = couplings('chebyshev', 6, 0.1);
    const ladder = crystalLadder(crystal, chain, 2 * Math.PI * 2400 * 0.13, lossless);
    const fs = 3.686e6;
    expect(Math.abs(slowWidth(ladder, fs - 500, fs + 4000, 2000) / 1575 - 1)).toBeLessThan(0.04);
  });
});

// Source: model of six 9 MHz crystals, 14 mH, 3.5 pF, 0.1 dB, 2400 Hz, worked elsewhere.
describe('what loss and wrong ends do', () => {
  const six = (qu: number) => design(9e6, 14e-3, 3.5e-12, 6, 'chebyshev', 0.1, 2400, qu);

  test.each([
    [200e3, 0.9],
    [100e3, 1.7],
    [50e3, 3.3],
    [25e3, 6.5],
    [10e3, 15.8],
  ])('Qu %i loses %f dB in the middle', (qu, loss) => {
    // The figures stand to a tenth of a decibel, and whether the width was held at 2400 Hz lossless
    // isn't said: 3 %. Six poles of 0.1 dB have a dip in the middle.
    const { ladder, span } = six(qu);
    const middle = gainAt(ladder, (span.low + span.high) / 2);
    expect(Math.abs(-middle - loss)).toBeLessThanOrEqual(0.05 + loss * 0.03);
  });

  test.each([
    [0.5, 1.05],
    [2, 0.94],
  ])(
    'ends of %f times the right resistance: %f of the width, about 2 dB of ripple',
    (factor, ratio) => {
      const { ladder, around, band } = six(100e3);
      const r = ladder.source[0] * factor;
      const wrong = between(ladder, [r, 0], [r, 0]);
      const found = passband(wrong, around);
      expect(Math.abs((found.high - found.low) / (band.high - band.low) - ratio)).toBeLessThan(
        0.015,
      );
    },
  );
});

describe('a grid of crystals', () => {
  const families = [
    ['butterworth', 0],
    ['chebyshev', 0.01],
    ['chebyshev', 0.1],
    ['chebyshev', 0.5],
    ['chebyshev', 1],
    ['equal', 0],
  ] as const;
  const grid: [number, number, number, number, Family, number, number, number][] = [];
  let pick = 0;
  for (const fs of [1.8e6, 3.6864e6, 7.2e6, 14.318e6, 21e6]) {
    for (const cm of [8e-15, 15e-15, 28e-15]) {
      for (const c0 of [2e-12, 4e-12, 7e-12]) {
        for (const n of [2, 3, 4, 5, 6, 7, 8, 9, 10]) {
          for (const qu of [20e3, 70e3, 200e3]) {
            // Families and widths go round at steps of their own, so that every pairing comes up.
            const [family, ripple] = families[pick % 6] ?? ['butterworth', 0];
            const width = [500, 1800, 2400, 2700, 3000][pick % 5] ?? 0;
            pick += 1;
            grid.push([fs, cm, c0, n, family, ripple, qu, width]);
          }
        }
      }
    }
  }

  test('the lossy width is the one asked for within 0.5 %, or a maximum is given', () => {
    const seen = { met: 0, wide: 0, narrow: 0, gap: 0 };
    for (const [fs, cm, c0, n, family, ripple, qu, width] of grid) {
      const crystal = crystalOf(fs, 1 / ((2 * Math.PI * fs) ** 2 * cm), qu, c0);
      const chain = couplings(family, n, ripple);
      const made = ladderForWidth(crystal, chain, lossless, width);
      seen[made.outcome] += 1;
      const at = `${fs} ${cm} ${c0} ${n} ${family} ${ripple} ${qu} ${width}: ${made.outcome}`;
      expect(made.widest.width, at).toBeGreaterThanOrEqual(made.width * (1 - 1e-9));
      if (made.outcome === 'wide') expect(made.widest.width, at).toBeLessThan(width);
      if (made.outcome === 'narrow') {
        // Closed form: n crystals one after the other without impedance are this wide already.
        const least = (fs / qu) * Math.sqrt(2 ** (1 / n) - 1);
        expect(width, at).toBeLessThan(least * 1.01);
      }
      // Only equal capacitors have dips near 3 dB, and with them widths that do not exist.
      if (made.outcome === 'gap') expect(family, at).toBe('equal');
      if (made.outcome !== 'met') continue;
      const { low, high } = made.band;
      const found = slowWidth(made.ladder, low - width * 0.3, high + width * 0.3, 300);
      expect(Math.abs(found / width - 1), `${at}, found ${found}`).toBeLessThan(5e-3);
    }
    console.log('grid of', grid.length, seen);
    expect(seen.gap).toBeLessThan(grid.length / 50);
  });

  test('the maximum is right: a scan over h with the slow ladder finds none greater', () => {
    const some = grid.filter(([, , , n], i) => n > 2 && i % 40 === 7);
    for (const [fs, cm, c0, n, family, ripple, qu] of some) {
      const crystal = crystalOf(fs, 1 / ((2 * Math.PI * fs) ** 2 * cm), qu, c0);
      const chain = couplings(family, n, ripple);
      const spacing = parallelResonance(crystal) - fs;
      const { widest } = ladderForWidth(crystal, chain, lossless, spacing * 100);
      let best = 0;
      for (let i = 0; i <= 160; i += 1) {
        const h = widest.h * 10 ** (-1 + i / 100);
        const ladder = crystalLadder(crystal, chain, h, lossless);
        best = Math.max(best, slowWidth(ladder, fs - spacing * 0.3, fs + spacing * 0.999, 400));
      }
      const at = `${fs} ${cm} ${c0} ${n} ${family} ${ripple} ${qu}`;
      expect(best / widest.width, at).toBeLessThan(1.001);
      expect(best / widest.width, at).toBeGreaterThan(0.995);
    }
  });

  test('3.6864 MHz, 130 mH, 5.8 pF cannot be 3000 Hz wide with six poles of 0.1 dB', () => {
    const chain = couplings('chebyshev', 6, 0.1);
    const ideal = ladderForWidth(crystalOf(3.6864e6, 0.13, 1e12, 5.8e-12), chain, lossless, 3000);
    expect(ideal.outcome).toBe('wide');
    // Source: the same independent solver, about 2.27 kHz.
    expect(Math.abs(ideal.widest.width / 2270 - 1)).toBeLessThan(0.003);
    const real = ladderForWidth(crystalOf(3.6864e6, 0.13, 90e3, 5.8e-12), chain, lossless, 3000);
    expect(real.widest.width).toBeLessThan(ideal.widest.width);
    // Holder capacitance is to blame: half of it would do.
    const low = ladderForWidth(crystalOf(3.6864e6, 0.13, 90e3, 2.9e-12), chain, lossless, 3000);
    expect(low.outcome).toBe('met');
    expect(slowGain(low.ladder, low.band.low) - low.band.gain).toBeCloseTo(-3, 6);
  });
});
