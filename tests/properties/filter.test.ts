import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { couplings, type Family } from '../../src/engine/circuit/couplings.ts';
import {
  crystalOf,
  crystalReactance,
  frequencyAtReactance,
  parallelResonance,
} from '../../src/engine/circuit/crystal.ts';
import type { Ladder } from '../../src/engine/circuit/ladder.ts';
import { ladderForWidth } from '../../src/engine/circuit/ladderForWidth.ts';
import { gainAt, ladderGain } from '../../src/engine/circuit/ladderGain.ts';
import { ladderResponse } from '../../src/engine/circuit/ladderResponse.ts';
import { workFilter } from '../../src/engine/stages/filter/work.ts';
import { slowGain } from '../reference/filter/slowLadder.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const many = (n: number, one: fc.Arbitrary<number>) =>
  fc.array(one, { minLength: n, maxLength: n }).map((all) => Float64Array.from(all));

/** Ladders of both forms with every part different from its neighbours. */
const anyLadder: fc.Arbitrary<Ladder> = fc
  .tuple(fc.integer({ min: 2, max: 12 }), fc.constantFrom('series', 'shunt'))
  .chain(([n, form]) => ladderOf(n, form));

const ladderOf = (n: number, form: 'series' | 'shunt'): fc.Arbitrary<Ladder> =>
  fc.record({
    form: fc.constant(form),
    lm: many(n, between(14e-3, 14.001e-3)),
    cm: many(n, fc.constant(2.2337e-14)),
    rm: many(n, between(3, 60)),
    c0: many(n, between(2e-12, 6e-12)),
    series: many(n, fc.oneof(fc.constant(0), between(20e-12, 900e-12))),
    coupling: many(n - 1, between(20e-12, 300e-12)),
    stray: many(form === 'shunt' ? n : n - 1, between(0, 4e-12)),
    capacitorQ: fc.oneof(fc.constant(Number.POSITIVE_INFINITY), between(50, 1e5)),
    endC: fc.tuple(between(0, 30e-12), between(0, 30e-12)),
    leakage: fc.constant(0),
    source: fc.tuple(between(20, 2000), between(-300, 300)),
    load: fc.tuple(between(20, 2000), between(-300, 300)),
  });

const around = Float64Array.from({ length: 41 }, (_, i) => 8.9995e6 + i * 150);
const filled = () => new Float64Array(around.length);

describe('the ladder kernel', () => {
  test('equals the slow and obvious ladder', () => {
    fc.assert(
      fc.property(anyLadder, (ladder) => {
        const gain = filled();
        ladderGain(ladder, around, gain);
        around.forEach((f, i) => {
          expect(gain[i]).toBeCloseTo(slowGain(ladder, f), 7);
        });
      }),
      { numRuns: 60 },
    );
  });

  // Reciprocity of networks of R, L and C.
  test('passes as much backwards as forwards', () => {
    const reversed = (ladder: Ladder): Ladder => ({
      ...ladder,
      lm: ladder.lm.toReversed(),
      cm: ladder.cm.toReversed(),
      rm: ladder.rm.toReversed(),
      c0: ladder.c0.toReversed(),
      series: ladder.series.toReversed(),
      coupling: ladder.coupling.toReversed(),
      stray: ladder.stray.toReversed(),
      endC: [ladder.endC[1], ladder.endC[0]],
      source: ladder.load,
      load: ladder.source,
    });
    fc.assert(
      fc.property(anyLadder, between(0, 3e-14), (parts, leakage) => {
        const ladder = { ...parts, leakage };
        const back = reversed(ladder);
        for (const f of around) expect(gainAt(ladder, f)).toBeCloseTo(gainAt(back, f), 6);
      }),
      { numRuns: 40 },
    );
  });

  // Conservation of power: what is neither passed nor lost comes back, the same at both ends.
  test('loses no power without losses', () => {
    fc.assert(
      fc.property(anyLadder, between(0, 3e-14), (parts, leakage) => {
        const ladder: Ladder = {
          ...parts,
          rm: parts.rm.map(() => 0),
          capacitorQ: Number.POSITIVE_INFINITY,
          leakage,
        };
        const [gain, returnLoss, outputReturnLoss] = [filled(), filled(), filled()];
        ladderResponse(ladder, around, { gain, returnLoss, outputReturnLoss });
        around.forEach((_, i) => {
          const passed = 10 ** ((gain[i] ?? 0) / 10);
          expect(passed + 10 ** (-(returnLoss[i] ?? 0) / 10)).toBeCloseTo(1, 7);
          expect(passed + 10 ** (-(outputReturnLoss[i] ?? 0) / 10)).toBeCloseTo(1, 7);
        });
      }),
      { numRuns: 40 },
    );
  });

  // Definition of group delay: −dφ/dω, here as a difference.
  test('delays by the slope of its phase', () => {
    fc.assert(
      fc.property(anyLadder, between(0, 3e-14), between(8.999e6, 9.006e6), (parts, leakage, f) => {
        const ladder = { ...parts, leakage };
        const [step, delay, phase] = [0.02, new Float64Array(3), new Float64Array(3)];
        ladderResponse(ladder, Float64Array.of(f - step, f, f + step), { delay, phase });
        const slope = ((phase[0] ?? 0) - (phase[2] ?? 0)) / (4 * Math.PI * step);
        expect(Math.abs(slope - (delay[1] ?? 0))).toBeLessThan(1e-8 + 1e-4 * Math.abs(slope));
      }),
      { numRuns: 200 },
    );
  });
});

test('the frequency of a reactance has that reactance', () => {
  fc.assert(
    fc.property(
      between(1.8e6, 21e6),
      between(8e-15, 28e-15),
      between(2e-12, 7e-12),
      between(-0.3, 50),
      (fs, cm, c0, size) => {
        const crystal = crystalOf(fs, 1 / ((2 * Math.PI * fs) ** 2 * cm), 1e5, c0);
        const reactance = size / (2 * Math.PI * fs * c0);
        const f = frequencyAtReactance(crystal, reactance);
        expect(f).toBeLessThan(parallelResonance(crystal));
        // A hertz near fp is a long way in reactance: compare where the rounding of f allows.
        const slope = Math.abs(
          (crystalReactance(crystal, f + 1e-3) - crystalReactance(crystal, f - 1e-3)) / 2e-3,
        );
        expect(Math.abs(crystalReactance(crystal, f) - reactance)).toBeLessThan(slope * 1e-7);
      },
    ),
    { numRuns: 500 },
  );
});

const families: Family[] = [
  'butterworth',
  'chebyshev',
  'bessel',
  'linear005',
  'linear05',
  'gaussian',
  'equal',
  'doubled',
];

test('a wider filter of the same crystals has a larger h, and none is wider than the widest', () => {
  fc.assert(
    fc.property(
      between(1.8e6, 21e6),
      between(8e-15, 28e-15),
      between(2e-12, 7e-12),
      fc.integer({ min: 3, max: 12 }),
      between(20e3, 200e3),
      between(0.2, 0.9),
      (fs, cm, c0, n, qu, part) => {
        const crystal = crystalOf(fs, 1 / ((2 * Math.PI * fs) ** 2 * cm), qu, c0);
        const chain = couplings('chebyshev', n, 0.1);
        const fittings = { capacitorQ: 2000, stray: 0 };
        const most = ladderForWidth(crystal, chain, fittings, 1e6).widest.width;
        const wide = ladderForWidth(crystal, chain, fittings, most * part);
        const narrow = ladderForWidth(crystal, chain, fittings, most * part * 0.9);
        if (wide.outcome !== 'met' || narrow.outcome !== 'met') return;
        expect(narrow.h).toBeLessThan(wide.h);
        expect(Math.abs(wide.width / (most * part) - 1)).toBeLessThan(1e-6);
      },
    ),
    { numRuns: 60 },
  );
});

/** Bags of crystals near any frequency or far from it; some with nothing but a frequency. */
const bags = fc.array(
  fc.record({
    label: fc.constantFrom('1', '2', '3', '4', '9'),
    fs: fc.option(between(1e6, 40e6)),
    lm: fc.option(between(1e-3, 1)),
    rm: fc.option(between(1, 500)),
    c0: fc.option(between(1e-12, 2e-11)),
  }),
  { maxLength: 6 },
);

test('any entry gives finite figures or none', () => {
  fc.assert(
    fc.property(
      fc.record({
        fs: between(1e6, 40e6),
        cm: between(1e-15, 50e-15),
        c0: between(1e-12, 20e-12),
        qu: between(500, 5e6),
        crystals: fc.integer({ min: 2, max: 12 }),
        bandwidth: between(50, 50e3),
        family: fc.constantFrom(...families),
        form: fc.constantFrom('series', 'shunt'),
        across: fc.option(between(0, 1e-9)),
        ripple: between(0.001, 3),
        fitted: fc.constantFrom(
          ...(['exact', 'e24', 'e12', 'e6', 'e24Pairs', 'e12Pairs', 'e6Pairs', 'own'] as const),
        ),
        owned: fc.option(fc.constantFrom('100p 5, 82p x3, 47p', '10p 40, 22p 40, 47p 40, 100p 40')),
        chosen: fc.option(fc.constantFrom('1 2 3 4', '1 2', '9 9', '')),
        bag: fc.option(bags),
        aligning: fc.constantFrom('design', 'each'),
        capacitorQ: between(20, 1e6),
        stray: between(0, 20e-12),
        sourceResistance: fc.option(between(0.1, 1e5)),
        loadResistance: fc.option(between(0.1, 1e5)),
        sourceReactance: fc.oneof(fc.constant(0), between(-1e5, 1e5)),
        loadReactance: fc.oneof(fc.constant(0), between(-1e5, 1e5)),
        leakage: fc.option(between(1e-18, 1e-11)),
        leakageDb: fc.option(between(10, 200)),
      }),
      ({ cm, ...given }) => {
        const lm = 1 / ((2 * Math.PI * given.fs) ** 2 * cm);
        const rm = (2 * Math.PI * given.fs * lm) / given.qu;
        const seen = { ...given, lm, rm } as Parameters<typeof workFilter>[0];
        const { results, problems } = workFilter(seen);
        for (const [key, value] of Object.entries(results)) {
          if (typeof value === 'number') expect(Number.isFinite(value), key).toBe(true);
        }
        const { response } = results;
        if (response) {
          for (const points of Object.values(response)) {
            expect(points.every(Number.isFinite)).toBe(true);
          }
        } else {
          expect(problems.some(({ weight }) => weight === 'stops')).toBe(true);
        }
      },
    ),
    { numRuns: 300 },
  );
});
