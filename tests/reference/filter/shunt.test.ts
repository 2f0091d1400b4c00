import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { alignedLadder } from '../../../src/engine/circuit/alignedLadder.ts';
import { couplings, type Family } from '../../../src/engine/circuit/couplings.ts';
import {
  crystalOf,
  crystalReactance,
  parallelResonance,
  seriesResonance,
} from '../../../src/engine/circuit/crystal.ts';
import { largestSum } from '../../../src/engine/circuit/crystalLadder.ts';
import type { Ladder } from '../../../src/engine/circuit/ladder.ts';
import {
  delayFormula,
  returnLossFormula,
} from '../../../src/engine/circuit/ladderFigureFormulas.ts';
import { type LadderTerm, ladderFormulas } from '../../../src/engine/circuit/ladderFormulas.ts';
import { type Arrangement, ladderForWidth } from '../../../src/engine/circuit/ladderForWidth.ts';
import { gainAt } from '../../../src/engine/circuit/ladderGain.ts';
import { ladderResponse } from '../../../src/engine/circuit/ladderResponse.ts';
import { shuntShape } from '../../../src/engine/circuit/ladderShape.ts';
import { passband } from '../../../src/engine/circuit/passband.ts';
import { frequencyAtSusceptance } from '../../../src/engine/circuit/susceptanceSpan.ts';
import { simulateAc } from '../simulator.ts';
import { ladderNetlist } from './ladderNetlist.ts';
import { slowWidth } from './slowLadder.ts';

const lossless: Arrangement = { capacitorQ: Number.POSITIVE_INFINITY, stray: 0, form: 'shunt' };

// Source: the reactance of the equivalent circuit, IEC 60122-1; −B = 1/X.
test('the frequency of a susceptance has that susceptance', () => {
  const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(
      between(1.8e6, 21e6),
      between(8e-15, 28e-15),
      between(2e-12, 30e-12),
      between(-0.8, 60),
      (fs, cm, c0, size) => {
        const crystal = crystalOf(fs, 1 / ((2 * Math.PI * fs) ** 2 * cm), 1e5, c0);
        const wanted = size * 2 * Math.PI * fs * c0;
        const f = frequencyAtSusceptance(crystal, wanted);
        const y = (at: number) => 1 / crystalReactance(crystal, at);
        if (Math.abs(size) > 1e-6) expect(f > parallelResonance(crystal)).toBe(wanted < 0);
        const slope = Math.abs(y(f + 1e-3) - y(f - 1e-3)) / 2e-3;
        expect(Math.abs(y(f) - wanted)).toBeLessThan(slope * 1e-7);
      },
    ),
    { numRuns: 300 },
  );
});

type Case = [string, number, number, number, number, number, Family, number, number, object];

// fs, Lm, Qu, C0, crystals, family, ripple, width, what is different from the design
const cases: Case[] = [
  ['six of 7.2 MHz', 7.2e6, 30e-3, 70e3, 4e-12, 6, 'chebyshev', 0.1, 2400, {}],
  ['eight of 9 MHz', 9e6, 14e-3, 100e3, 3.5e-12, 8, 'chebyshev', 0.1, 2400, {}],
  ['two', 9e6, 14e-3, 100e3, 3.5e-12, 2, 'butterworth', 0, 2700, {}],
  ['four Butterworth', 14.318e6, 7.5e-3, 80e3, 3e-12, 4, 'butterworth', 0, 2700, {}],
  ['equal capacitors', 9e6, 14e-3, 100e3, 3.5e-12, 6, 'equal', 0, 2400, {}],
  ['linear phase', 9e6, 14e-3, 100e3, 3.5e-12, 5, 'linear05', 0, 2400, {}],
  [
    'leakage and stray',
    7.2e6,
    30e-3,
    70e3,
    4e-12,
    6,
    'chebyshev',
    0.1,
    2400,
    { leakage: 5e-15, stray: Float64Array.of(1e-12, 2e-12, 1.5e-12, 1e-12, 0, 1e-12) },
  ],
  [
    'one bad crystal, capacitors at the ends',
    9e6,
    14e-3,
    100e3,
    3.5e-12,
    4,
    'chebyshev',
    0.1,
    2400,
    { rm: Float64Array.of(8, 90, 8, 8), endC: [3e-12, 1e-12] },
  ],
];

// Source: ngspice, run here and now.
test.each(cases)(
  '%s to ground: the gain is the simulator’s',
  async (_, fs, lm, qu, c0, n, family, ripple, width, other) => {
    const made = ladderForWidth(
      crystalOf(fs, lm, qu, c0),
      couplings(family, n, ripple),
      lossless,
      width,
    );
    const ladder: Ladder = { ...made.ladder, ...other };
    const { low, high } = made.band;
    const run = await simulateAc(ladderNetlist(ladder, low), {
      from: Math.min(fs - 300, low - width),
      to: high + 2 * width,
      points: 301,
    });
    const level = run.level('out');
    let compared = 0;
    run.frequency.forEach((f, i) => {
      const gain = gainAt(ladder, f);
      if (gain < -100) return;
      compared += 1;
      const simulated = (level[i] ?? 0) + 10 * Math.log10((4 * ladder.source[0]) / ladder.load[0]);
      expect(Math.abs(simulated - gain), `${f} Hz, ${gain} dB`).toBeLessThan(1e-6);
    });
    expect(compared).toBeGreaterThan(100);
  },
);

describe('the dual of the series form', () => {
  const crystal = crystalOf(7.2e6, 30e-3, 1e12, 4e-12);
  const chain = couplings('chebyshev', 6, 0.1);

  // Source: X = 1/y turns one form's passband into the other's, so the greatest lossless width is the
  // same: the closed form of the series form.
  test('has the same greatest width', () => {
    const series = ladderForWidth(crystal, chain, { ...lossless, form: 'series' }, 1e6);
    const shunt = ladderForWidth(crystal, chain, { ...lossless, across: 0 }, 1e6);
    expect(shunt.outcome).toBe('wide');
    // A capacitor's reactance is not quite constant over so wide a passband.
    expect(Math.abs(shunt.widest.width / series.widest.width - 1)).toBeLessThan(5e-3);
  });

  test('stops at fs altogether, and falls faster below than above', () => {
    for (const qu of [1e12, 70e3]) {
      const real = crystalOf(7.2e6, 30e-3, qu, 4e-12);
      const { ladder, band } = ladderForWidth(real, chain, lossless, 2400);
      const below = gainAt(ladder, band.low - 500) - band.gain;
      const above = gainAt(ladder, band.high + 500) - band.gain;
      expect(below).toBeLessThan(above - 5);
      expect(gainAt(ladder, seriesResonance(real) + 1e-3) - band.gain).toBeLessThan(-150);
    }
  });

  // Definition: more C0 with the crystal is what a capacitor across it is.
  test('takes stray to ground and a capacitor across the crystal as C0', () => {
    const padded = ladderForWidth(crystal, chain, { ...lossless, across: 3e-12 }, 2400);
    const stray = ladderForWidth(crystal, chain, { ...lossless, across: 0, stray: 3e-12 }, 2400);
    const holder = ladderForWidth(
      { ...crystal, c0: 7e-12 },
      chain,
      { ...lossless, across: 0 },
      2400,
    );
    for (const one of [padded, stray]) {
      expect(one.h / holder.h).toBeCloseTo(1, 9);
      one.ladder.coupling.forEach((c, i) => {
        expect(c / (holder.ladder.coupling[i] ?? 0)).toBeCloseTo(1, 9);
      });
    }
  });
});

test('the lossy width of crystals to ground is the one asked for within 0.5 %, or out of reach', () => {
  const families: Family[] = [
    'butterworth',
    'chebyshev',
    'bessel',
    'gaussian',
    'linear005',
    'linear05',
    'equal',
  ];
  const seen = { met: 0, wide: 0, narrow: 0, gap: 0 };
  let scanned = 0;
  let pick = 0;
  for (const fs of [3.6864e6, 9e6, 14.318e6]) {
    for (const [cm, c0] of [
      [9e-15, 2.5e-12],
      [20e-15, 5e-12],
    ] as const) {
      for (const n of [2, 3, 4, 6, 8, 10]) {
        for (const width of [500, 1800, 2400, 3000]) {
          const family = families[pick % 7] ?? 'equal';
          const qu = [40e3, 100e3, 250e3][pick % 3] ?? 0;
          pick += 1;
          const crystal = crystalOf(fs, 1 / ((2 * Math.PI * fs) ** 2 * cm), qu, c0);
          const chain = couplings(family, n, 0.1);
          const made = ladderForWidth(crystal, chain, lossless, width);
          seen[made.outcome] += 1;
          const at = `${fs} ${cm} ${n} ${family} ${qu} ${width}: ${made.outcome}`;
          if (made.outcome === 'met') {
            const { low, high } = made.band;
            const found = slowWidth(made.ladder, low - width * 0.3, high + width * 0.3, 240);
            expect(Math.abs(found / width - 1), at).toBeLessThan(5e-3);
          }
          if (made.outcome !== 'wide') continue;
          // A scan over h finds none wider.
          expect(made.widest.width, at).toBeLessThan(width);
          if (scanned >= 6) continue;
          scanned += 1;
          const shape = shuntShape(crystal, chain, lossless, 0);
          for (let i = 0; i <= 60; i += 1) {
            const h = made.widest.h * 10 ** (-1 + i / 30);
            const band = passband(shape.ladder(h), shape.frequencies(h, 0.5), 1e-3);
            expect(band.high - band.low, at).toBeLessThan(made.widest.width * 1.001);
          }
        }
      }
    }
  }
  console.log('shunt grid of', pick, seen);
  expect(seen.gap).toBeLessThan(pick / 40);
  expect(seen.met).toBeGreaterThan(pick / 2);
});

// Definition: alike crystals need what the design has, common capacitance across all of them and all.
test('alike crystals are aligned as the design is', () => {
  const crystal = crystalOf(9e6, 14e-3, 1e5, 3.5e-12);
  const { ladder, shape } = ladderForWidth(crystal, couplings('chebyshev', 6, 0.1), lossless, 2400);
  expect(shape.across).toBeGreaterThan(1e-12);
  const made = alignedLadder(ladder, Array(6).fill(crystal), 'each');
  made.series.forEach((c, i) => {
    expect(c / (ladder.series[i] ?? 0)).toBeCloseTo(1, 4);
  });
  const none = alignedLadder(ladder, Array(6).fill(crystal), 'none');
  none.series.forEach((c) => {
    expect(c).toBeCloseTo(shape.across, 20);
  });
});

test('a coupling that the sums are worked from is the largest', () => {
  // Definition: the node with the largest sum needs no capacitor.
  const chain = couplings('bessel', 5, 0);
  const { ladder } = ladderForWidth(
    crystalOf(9e6, 14e-3, 1e5, 3.5e-12),
    chain,
    { ...lossless, across: 0 },
    1500,
  );
  expect(Math.min(...ladder.series)).toBe(0);
  expect(largestSum(chain)).toBeGreaterThan(1);
});

// Source: mathjs, a general library, on the chain matrices written out; the kernel shares no code.
test('the formulas shown give the kernel’s figures', () => {
  const made = ladderForWidth(
    crystalOf(9e6, 14e-3, 1e5, 3.5e-12),
    couplings('chebyshev', 5, 0.1),
    { capacitorQ: 1500, stray: 1e-12, form: 'shunt' },
    2400,
  );
  for (const other of [{}, { leakage: 4e-15 }, { source: [900, 200], load: [1100, -300] }]) {
    const ladder = { ...made.ladder, ...other } as Ladder;
    for (const f of [made.band.low - 900, made.band.peak, made.band.high + 1500]) {
      const frequency = Float64Array.of(f);
      const [delay, returnLoss] = [new Float64Array(1), new Float64Array(1)];
      ladderResponse(ladder, frequency, { delay, returnLoss });
      const gain = ladderFormulas(ladder, ['f']);
      const shown = (formula: string, where: Readonly<Record<string, LadderTerm>>): number => {
        const scope: Record<string, unknown> = { f };
        for (const [name, term] of Object.entries(where)) {
          scope[name] = 'value' in term ? term.value : evaluate(term.formula, scope);
        }
        return evaluate(formula, scope) as number;
      };
      expect(shown(gain.formulas[0] ?? '', gain.where)).toBeCloseTo(gainAt(ladder, f), 8);
      const late = delayFormula(ladder, 'f');
      expect(shown(late.formula, late.where) / (delay[0] ?? 0)).toBeCloseTo(1, 8);
      const match = returnLossFormula(ladder, 'f');
      expect(shown(match.formula, match.where) / (returnLoss[0] ?? 0)).toBeCloseTo(1, 8);
    }
  }
});
