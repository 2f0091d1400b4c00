import { describe, expect, test } from 'vitest';
import { couplings } from '../../../src/engine/circuit/couplings.ts';
import { crystalOf } from '../../../src/engine/circuit/crystal.ts';
import { ladderForWidth } from '../../../src/engine/circuit/ladderForWidth.ts';
import { gainAt } from '../../../src/engine/circuit/ladderGain.ts';
import { passband, skirt } from '../../../src/engine/circuit/passband.ts';
import { blankDraws, drawBuild } from '../../../src/engine/errands/yield/drawBuild.ts';
import { factorsOf } from '../../../src/engine/errands/yield/factors.ts';
import { perfect, type Spreads } from '../../../src/engine/errands/yield/spreads.ts';
import { varied } from '../../../src/engine/errands/yield/varied.ts';

/*
 * Figures from an independent numerical study (from memory, source not kept): six crystals, 9 MHz, 14 mH, 3.5 pF, Qu
 * 100 000, 2.4 kHz, about 200 Ω. The 90th percentile of ripple, and the span of the width.
 *
 * Its ripple is not the dip between humps but the whole fall over the middle of the passband: the
 * perfect set has 0.83 dB. Which middle is not said; taken here as the share of the −6 dB width that
 * gives the perfect set its 0.83 dB, with the ladder designed without loss. Nothing else is fitted:
 * the nine figures for imperfect sets are the check.
 */
const MIDDLE = 0.76;
const crystal = crystalOf(9e6, 14e-3, 100e3, 3.5e-12);
const bare = { capacitorQ: Number.POSITIVE_INFINITY, stray: 0 };
const made = ladderForWidth({ ...crystal, rm: 1e-6 }, couplings('chebyshev', 6, 0.1), bare, 2400);
const wanted = { ...made.ladder, rm: made.ladder.rm.map(() => crystal.rm) };
const around = Array.from({ length: 200 }, (_, i) => made.band.low - 1200 + 24 * i);

function study(spreads: Spreads, builds: number) {
  const { ladder, set } = varied(wanted);
  const factors = factorsOf(wanted);
  const draws = blankDraws();
  const ripple: number[] = [];
  const width: number[] = [];
  for (let i = 0; i < builds; i += 1) {
    drawBuild(1, i, factors, spreads, draws);
    set(draws, spreads);
    const band = passband(ladder, around, 0.01);
    const low = skirt(ladder, band.gain - 6, band.low, -50, 9000, 0.01) ?? band.low;
    const high = skirt(ladder, band.gain - 6, band.high, 50, 9000, 0.01) ?? band.high;
    const gains = Array.from({ length: 101 }, (_, k) =>
      gainAt(ladder, (low + high) / 2 + MIDDLE * (high - low) * (k / 100 - 0.5)),
    );
    ripple.push(Math.max(...gains) - Math.min(...gains));
    width.push(band.high - band.low);
  }
  const part = (of: number[], p: number) =>
    of.sort((a, b) => a - b)[Math.round(p * (builds - 1))] ?? 0;
  return {
    p90: part(ripple, 0.9),
    span: part(width, 0.95) - part(width, 0.05),
    middle: part(width, 0.5),
  };
}

describe('ripple of imperfect sets, 90 of 100 builds have less', () => {
  test('the perfect set', () => {
    expect(study(perfect, 1).p90).toBeCloseTo(0.83, 1);
  });

  // Window from peak to peak over the bandwidth, draws even over it. Up to a fifth the study and
  // this agree to some hundredths; beyond that the passband falls apart, and what counts as its
  // middle decides. 600 builds know the 90th percentile to about 4 % there.
  test.each([
    [0.02, 0.86, 0.04],
    [0.05, 0.91, 0.04],
    [0.1, 1.12, 0.07],
    [0.2, 1.93, 0.15],
    [0.3, 3.3, 0.35],
    [0.5, 5.1, 0.5],
  ])('crystals in a window of %f of the width: %f dB', (window, published, allowed) => {
    const frequency = (window * 2400) / Math.sqrt(12);
    const { p90 } = study({ ...perfect, frequency, frequencyShape: 'even' }, 600);
    expect(Math.abs(p90 - published)).toBeLessThan(allowed);
  });

  test.each([
    [0.02, 0.88, 0.04],
    [0.05, 1.04, 0.08],
    [0.1, 1.62, 0.15],
  ])('capacitors of %f: %f dB', (capacitors, published, allowed) => {
    const { p90 } = study({ ...perfect, capacitors }, 600);
    expect(Math.abs(p90 - published)).toBeLessThan(allowed);
  });
});

describe('width with imperfect capacitors', () => {
  // Published as 2300 to 2420 Hz (5 %) and 2250 to 2460 Hz (10 %), by what rule is not said; nine
  // tenths of the builds are taken. Their middle is 2360 Hz, ours without loss in the design 2303 Hz.
  test.each([
    [0.05, 120],
    [0.1, 210],
  ])('of %f: a span of %i Hz', (capacitors, published) => {
    const { span, middle } = study({ ...perfect, capacitors }, 600);
    expect(Math.abs(span / published - 1)).toBeLessThan(0.2);
    expect(Math.abs(middle - 2303)).toBeLessThan(15);
  });

  // "BW unaffected" by mismatch up to a tenth of the width.
  test('hardly follows the crystals', () => {
    const frequency = 240 / Math.sqrt(12);
    const { span } = study({ ...perfect, frequency, frequencyShape: 'even' }, 600);
    expect(span / 2400).toBeLessThan(0.015);
  });
});
