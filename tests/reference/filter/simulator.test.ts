import { expect, test } from 'vitest';
import { couplings, type Family } from '../../../src/engine/circuit/couplings.ts';
import { crystalOf } from '../../../src/engine/circuit/crystal.ts';
import type { Ladder } from '../../../src/engine/circuit/ladder.ts';
import { ladderForWidth } from '../../../src/engine/circuit/ladderForWidth.ts';
import { gainAt } from '../../../src/engine/circuit/ladderGain.ts';
import { simulateAc } from '../simulator.ts';
import { ladderNetlist } from './ladderNetlist.ts';

type Case = [
  string,
  number,
  number,
  number,
  number,
  number,
  Family,
  number,
  number,
  Partial<Ladder>,
];

// fs, Lm, Qu, C0, crystals, family, ripple, width, what is different from the design
const cases: Case[] = [
  ['six of 7.2 MHz', 7.2e6, 30e-3, 70e3, 4e-12, 6, 'chebyshev', 0.1, 2400, {}],
  ['eight of 14.318 MHz', 14.318e6, 7.5e-3, 80e3, 3e-12, 8, 'chebyshev', 0.1, 2500, {}],
  [
    'six of 3.6864 MHz at their widest',
    3.6864e6,
    0.13,
    90e3,
    5.8e-12,
    6,
    'chebyshev',
    0.1,
    3000,
    {},
  ],
  ['two', 9e6, 14e-3, 100e3, 3.5e-12, 2, 'butterworth', 0, 2700, {}],
  ['four Butterworth', 14.316e6, 7.5e-3, 120e3, 3e-12, 4, 'butterworth', 0, 2700, {}],
  ['twelve', 9e6, 14e-3, 200e3, 3.5e-12, 12, 'chebyshev', 0.5, 2400, {}],
  ['eight with equal capacitors', 8e6, 19.5e-3, 102e3, 4e-12, 8, 'equal', 0, 1800, {}],
  ['a narrow one', 4.9152e6, 70e-3, 60e3, 5e-12, 5, 'butterworth', 0, 400, {}],
  ['poor crystals', 21e6, 4e-3, 20e3, 4e-12, 4, 'chebyshev', 0.01, 3000, {}],
  [
    'between reactive ends',
    10e6,
    10e-3,
    75e3,
    5e-12,
    6,
    'chebyshev',
    0.1,
    2400,
    { source: [50, 30], load: [1200, -200] },
  ],
  [
    'with stray and capacitors at the ends',
    10e6,
    10e-3,
    75e3,
    5e-12,
    6,
    'chebyshev',
    0.1,
    2400,
    { stray: new Float64Array(5).fill(2e-12), endC: [12e-12, 8e-12] },
  ],
  [
    'with leakage past it',
    7.2e6,
    30e-3,
    70e3,
    4e-12,
    6,
    'chebyshev',
    0.1,
    2400,
    { leakage: 5e-15 },
  ],
  ['five Bessel', 9e6, 14e-3, 100e3, 3.5e-12, 5, 'bessel', 0, 2400, {}],
  ['six of linear phase', 7.2e6, 30e-3, 70e3, 4e-12, 6, 'linear005', 0, 1500, {}],
  ['seven Gaussian to 6 dB', 9e6, 14e-3, 150e3, 3.5e-12, 7, 'gaussian', 0, 1800, {}],
  ['six with two crystals at each end', 9e6, 14e-3, 100e3, 3.5e-12, 6, 'doubled', 0, 2400, {}],
  [
    'with one bad crystal',
    9e6,
    14e-3,
    100e3,
    3.5e-12,
    6,
    'chebyshev',
    0.1,
    2400,
    {
      rm: Float64Array.of(8, 8, 90, 8, 8, 8),
      lm: Float64Array.of(14e-3, 14.0002e-3, 13.9999e-3, 14e-3, 14.0003e-3, 14e-3),
    },
  ],
];

// Source: ngspice, run here and now.
test.each(cases)(
  '%s: the gain is the simulator’s',
  async (_, fs, lm, qu, c0, n, family, ripple, width, other) => {
    const made = ladderForWidth(
      crystalOf(fs, lm, qu, c0),
      couplings(family, n, ripple),
      { capacitorQ: Number.POSITIVE_INFINITY, stray: 0 },
      width,
    );
    const ladder = { ...made.ladder, ...other };
    const { low, high } = made.band;
    const span = high - low;
    const run = await simulateAc(ladderNetlist(ladder, (low + high) / 2), {
      from: low - 2 * span,
      to: high + 2 * span,
      points: 401,
    });
    const level = run.level('out');
    let compared = 0;
    run.frequency.forEach((f, i) => {
      // A reactive end is a coil or capacitor there: its reactance is right at one frequency only.
      const at = ladderAt(ladder, f, (low + high) / 2);
      const gain = gainAt(at, f);
      if (gain < -100) return;
      compared += 1;
      const simulated = (level[i] ?? 0) + 10 * Math.log10((4 * ladder.source[0]) / ladder.load[0]);
      expect(Math.abs(simulated - gain), `${f} Hz, ${gain} dB`).toBeLessThan(1e-6);
    });
    expect(compared).toBeGreaterThan(100);
  },
);

function ladderAt(ladder: Ladder, f: number, reference: number): Ladder {
  const x = (value: number) => (value >= 0 ? (value * f) / reference : (value * reference) / f);
  return {
    ...ladder,
    source: [ladder.source[0], x(ladder.source[1])],
    load: [ladder.load[0], x(ladder.load[1])],
  };
}
