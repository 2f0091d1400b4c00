import { describe, expect, test } from 'vitest';
import type { Ladder } from '../../../src/engine/circuit/ladder.ts';
import { gainAt } from '../../../src/engine/circuit/ladderGain.ts';
import { type Passband, passband } from '../../../src/engine/circuit/passband.ts';
import { passbandRipple } from '../../../src/engine/circuit/passbandRipple.ts';
import { buildFigures } from '../../../src/engine/errands/yield/buildFigures.ts';
import { blankDraws, drawBuild } from '../../../src/engine/errands/yield/drawBuild.ts';
import { factorsOf } from '../../../src/engine/errands/yield/factors.ts';
import { sampleFrequencies } from '../../../src/engine/errands/yield/sampleFrequencies.ts';
import { varied } from '../../../src/engine/errands/yield/varied.ts';
import { suppressionAt, worstTone } from '../../../src/engine/stages/carrier/tones.ts';
import { orderFor } from './order.ts';

const spreads = {
  capacitors: 0.05,
  capacitorShape: 'even',
  frequency: 60,
  frequencyShape: 'normal',
  lm: 0.02,
  rm: 0.2,
  c0: 0.05,
  ends: 0.1,
} as const;

/** How far the lower rim of a hollow stands over its bottom, dB. */
function hollow(ladder: Ladder, band: Passband, at: number): number {
  const rim = (to: number) =>
    Math.max(...Array.from({ length: 400 }, (_, i) => gainAt(ladder, at + ((to - at) * i) / 399)));
  return Math.min(rim(band.low), rim(band.high)) - gainAt(ladder, at);
}

describe('figures read off 201 points', () => {
  // Against the root finders on the same ladder, which the simulator vouches for. Only a hollow in
  // a slope that is shallower than a fiftieth of a decibel may be overlooked.
  test.each([
    [2, 50e3, 0.1],
    [4, 100e3, 0.5],
    [6, 100e3, 0.1],
    [8, 70e3, 0.1],
    [8, 300e3, 0.1],
    [12, 100e3, 0.1],
  ])('%i crystals of Q %i, %f dB', (n, qu, ripple) => {
    const { ladder: wanted, low, high, carrier } = orderFor(n, qu, ripple);
    const { ladder, set } = varied(wanted);
    const factors = factorsOf(wanted);
    const frequency = sampleFrequencies(low, high);
    expect(frequency.every((f, i) => i === 0 || f > (frequency[i - 1] ?? 0))).toBe(true);
    const around = Array.from({ length: 2001 }, (_, i) => low - 1500 + 2.7 * i);
    const [gain, found, draws] = [new Float64Array(201), new Float64Array(5), blankDraws()];
    const builds = 200;
    const off = { width: 0, ripple: 0, loss: 0, carrier: 0, opposite: 0 };
    for (let i = 0; i < builds; i += 1) {
      drawBuild(3, i, factors, spreads, draws);
      set(draws, spreads);
      buildFigures(ladder, frequency, carrier, gain, found);
      const band = passband(ladder, around, 1e-6);
      const dip = passbandRipple(ladder, around, band);
      const [width = 0, rippleFound = 0, loss = 0, down = 0, opposite = 0] = found;
      if (Math.abs(width - (band.high - band.low)) > 0.5) off.width += 1;
      if (Math.abs(rippleFound - dip.depth) > 0.005 && hollow(ladder, band, dip.at ?? low) > 0.02) {
        off.ripple += 1;
      }
      if (Math.abs(loss + band.gain) > 0.002) off.loss += 1;
      const at = (f: number) => gainAt(ladder, f);
      const f = carrier?.frequency ?? 0;
      if (Math.abs(down - (band.gain - at(f))) > 0.002) off.carrier += 1;
      const worst = suppressionAt(at, f, 1, worstTone(at, f, 1));
      if (Math.abs(opposite - worst) > 1e-9) off.opposite += 1;
    }
    expect(off.width).toBe(0);
    expect(off.ripple).toBe(0);
    expect(off.loss).toBe(0);
    expect(off.carrier).toBe(0);
    expect(off.opposite).toBe(0);
  });

  test('an edge beyond the points is followed on the ladder itself', () => {
    const { ladder, low, high } = orderFor(6);
    // A third of the capacitance, three times the ends: more than twice as wide.
    const wide = {
      ...ladder,
      coupling: ladder.coupling.map((c) => c / 3),
      series: ladder.series.map((c) => c / 3),
      source: [ladder.source[0] * 3, 0] as const,
      load: [ladder.load[0] * 3, 0] as const,
    };
    const found = new Float64Array(5);
    buildFigures(wide, sampleFrequencies(low, high), null, new Float64Array(201), found);
    const around = Array.from({ length: 900 }, (_, i) => low - 9000 + (24000 * i) / 899);
    const band = passband(wide, around, 1e-4);
    expect(band.high - band.low).toBeGreaterThan(2.2 * 2400);
    expect(Math.abs((found[0] ?? 0) - (band.high - band.low))).toBeLessThan(2);
    expect(found[3]).toBeNaN();
  });
});

describe('a build', () => {
  test('with nothing off is the filter itself', () => {
    const { ladder: wanted } = orderFor(8);
    const { ladder, set } = varied(wanted);
    set(blankDraws(), spreads);
    for (const key of ['lm', 'cm', 'rm', 'c0', 'series', 'coupling'] as const) {
      expect(ladder[key]).toEqual(wanted[key]);
    }
    expect(ladder.source).toEqual(wanted.source);
  });

  test('keeps fs where Lm is off, and moves it by hertz where fs is', () => {
    const { ladder: wanted } = orderFor(4);
    const { ladder, set } = varied(wanted);
    const factors = factorsOf(wanted);
    const draws = blankDraws();
    for (const { kind, position, draw } of factors) {
      if (kind === 'frequency' && position === 2) draws[draw] = 1;
      if (kind === 'lm') draws[draw] = -1.5;
    }
    set(draws, spreads);
    const fs = (i: number) =>
      1 / (2 * Math.PI * Math.sqrt((ladder.lm[i] ?? 0) * (ladder.cm[i] ?? 0)));
    expect(fs(1)).toBeCloseTo(9e6, 3);
    expect(fs(2)).toBeCloseTo(9e6 + 60, 3);
    expect(ladder.lm[0]).toBeCloseTo(14e-3 * Math.exp(-0.03), 9);
  });
});
