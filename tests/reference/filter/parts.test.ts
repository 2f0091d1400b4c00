import { describe, expect, test } from 'vitest';
import { couplings } from '../../../src/engine/circuit/couplings.ts';
import { crystalOf } from '../../../src/engine/circuit/crystal.ts';
import { departureOf } from '../../../src/engine/circuit/jointParts.ts';
import type { Ladder } from '../../../src/engine/circuit/ladder.ts';
import { type LadderForWidth, ladderForWidth } from '../../../src/engine/circuit/ladderForWidth.ts';
import { partChain } from '../../../src/engine/circuit/partChain.ts';
import { decadeOf } from '../../../src/engine/quantity/preferred.ts';
import {
  type Fitted,
  type SeriesFitting,
  seriesOf,
} from '../../../src/engine/stages/filter/chooseCapacitor.ts';
import { type FittedParts, fitParts } from '../../../src/engine/stages/filter/fitParts.ts';
import { wantedResponse } from '../../../src/engine/stages/filter/wantedResponse.ts';
import { simulateAc } from '../simulator.ts';
import { type GridCase, grid } from './grid.ts';
import { ladderNetlist } from './ladderNetlist.ts';
import { slowGain } from './slowLadder.ts';

const fittings = ['e6', 'e12', 'e24', 'e6Pairs', 'e12Pairs', 'e24Pairs'] as const;

function designOf({ fs, cm, c0, n, family, ripple, qu, width }: GridCase): LadderForWidth {
  const crystal = crystalOf(fs, 1 / ((2 * Math.PI * fs) ** 2 * cm), qu, c0);
  return ladderForWidth(
    crystal,
    couplings(family, n, ripple),
    { capacitorQ: 2000, stray: 0 },
    width,
  );
}

/** All of them; where the width is out of reach, the nearest there is. */
const made = grid().map(designOf);

const withParts = (ladder: Ladder, parts: FittedParts, which: 'chosen' | 'nearest'): Ladder => ({
  ...ladder,
  coupling: Float64Array.from(parts.coupling, (one) => one[which].value),
  series: Float64Array.from(parts.series, (one) => one?.[which].value ?? 0),
});

/** The departure again, by the slow and obvious ladder and the words of the field's help. */
function slowDeparture(exact: LadderForWidth, built: Ladder): number {
  const { low, high, gain: best } = exact.band;
  const width = high - low;
  const out = [0.03, 0.07, 0.12, 0.2, 0.3, 0.45, 0.65, 0.9];
  const points: [f: number, weight: number][] = [
    ...out.flatMap((d): [number, number][] => [
      [low - d * width, 0.1],
      [high + d * width, 0.1],
    ]),
    ...Array.from({ length: 25 }, (_, i): [number, number] => [
      low + (width * (1 - Math.cos((Math.PI * i) / 24))) / 2,
      1,
    ]),
  ];
  let sum = 0;
  let weights = 0;
  for (const [f, weight] of points) {
    const deep = (g: number) => Math.max(g, best - 60);
    const off = deep(slowGain(built, f)) - deep(slowGain(exact.ladder, f));
    sum += weight * off * off;
    weights += weight;
  }
  return Math.sqrt(sum / weights);
}

const median = (all: readonly number[]) => all.toSorted((a, b) => a - b)[all.length >> 1] ?? 0;

describe.each(fittings)('%s over the grid', (fitting) => {
  const found = made.map((design) => {
    const wanted = wantedResponse(design.ladder, design.band);
    const parts = fitParts(design.ladder, wanted, fitting, []);
    const rms = (sum: number) => Math.sqrt(sum / wanted.weights);
    return {
      design,
      parts,
      one: rms(parts.sums.nearest),
      all: rms(parts.sums.chosen),
    };
  });

  test('chosen together is never worse than each rounded by itself, and mostly much better', () => {
    for (const { one, all } of found) expect(all).toBeLessThanOrEqual(one * (1 + 1e-12));
    const better = found.filter(({ one, all }) => all < 0.8 * one).length / found.length;
    const half = found.filter(({ one, all }) => all < 0.5 * one).length / found.length;
    console.log(
      `${fitting}: ${found.length} filters, departure rounded ${median(found.map((f) => f.one)).toFixed(3)} dB rms, ` +
        `together ${median(found.map((f) => f.all)).toFixed(3)}; a fifth better in ${(100 * better).toFixed(0)} %, ` +
        `halved in ${(100 * half).toFixed(0)} %, worse in none`,
    );
    expect(better).toBeGreaterThan(0.5);
  });

  // Source: nodal analysis, written without regard for speed.
  test('the departure is what a slow ladder says it is', () => {
    for (const { design, parts, one, all } of found.filter((_, i) => i % 80 === 0)) {
      const { ladder } = design;
      expect(slowDeparture(design, withParts(ladder, parts, 'chosen'))).toBeCloseTo(all, 6);
      expect(slowDeparture(design, withParts(ladder, parts, 'nearest'))).toBeCloseTo(one, 6);
      expect(parts.sums.exact).toBeLessThan(1e-12);
    }
  });

  // Source: IEC 60063, table 1.
  test('all are parts of the series, one or two at a place', () => {
    const [series, way] = seriesOf(fitting);
    const decade = decadeOf(series);
    for (const { parts } of found) {
      for (const { chosen } of [...parts.coupling, ...parts.series.flatMap((s) => s ?? [])]) {
        expect(chosen.parts.length).toBeLessThanOrEqual(way === 'pair' ? 2 : 1);
        expect(sumOf(chosen)).toBeCloseTo(chosen.value, 20);
        for (const part of chosen.parts) {
          const digits = Number((part / 10 ** Math.floor(Math.log10(part * 1.0001))).toFixed(3));
          expect(decade).toContain(digits);
        }
      }
    }
  });
});

const sumOf = ({ parts }: Fitted) => parts.reduce((sum, part) => sum + part, 0);

// Source: every combination tried, for filters of which there are few enough.
test.each(['e6', 'e12'] as const)('%s: of all combinations none is much better', (fitting) => {
  const few = made.filter(({ ladder }) => ladder.lm.length === 3 || ladder.lm.length === 4);
  const ratios = few.filter((_, i) => i % 20 === 0).map((design) => exhaustive(design, fitting));
  console.log(
    `${fitting}: of ${ratios.length} small filters ${ratios.filter((r) => r < 1.0001).length} are the very best, median ${median(ratios).toFixed(3)}, worst ${Math.max(...ratios).toFixed(2)} times its departure`,
  );
  expect(median(ratios)).toBeLessThan(1.0001);
});

/** How many times the least departure there is the search ends at. */
function exhaustive({ ladder, band }: LadderForWidth, fitting: SeriesFitting): number {
  const wanted = wantedResponse(ladder, band);
  const parts = fitParts(ladder, wanted, fitting, []);
  const chain = partChain(ladder, wanted.frequency);
  const decade = decadeOf(seriesOf(fitting)[0]);
  const near = chain.places.map(({ of, at }) => {
    const exact = ladder[of][at] ?? 0;
    const power = 10 ** Math.floor(Math.log10(exact));
    const all = [0.1, 1, 10].flatMap((by) => decade.map((digit) => digit * by * power));
    return all
      .toSorted((a, b) => Math.abs(Math.log(a / exact)) - Math.abs(Math.log(b / exact)))
      .slice(0, 5);
  });
  let least = Number.POSITIVE_INFINITY;
  const values = new Float64Array(near.length);
  const descend = (at: number): void => {
    if (at === near.length) {
      least = Math.min(least, departureOf(chain, wanted, values));
      return;
    }
    for (const value of near[at] ?? []) {
      values[at] = value;
      descend(at + 1);
    }
  };
  descend(0);
  return Math.sqrt(parts.sums.chosen / least);
}

// Source: ngspice, run here and now, on the parts as chosen (capacitors lossless).
test('the simulator finds the same response', async () => {
  const crystal = crystalOf(9e6, 14e-3, 100e3, 3.5e-12);
  const lossless = { capacitorQ: Number.POSITIVE_INFINITY, stray: 0 };
  const { ladder, band } = ladderForWidth(crystal, couplings('chebyshev', 6, 0.1), lossless, 2400);
  const wanted = wantedResponse(ladder, band);
  const parts = fitParts(ladder, wanted, 'e12', []);
  const built = withParts(ladder, parts, 'chosen');
  const ends = 10 * Math.log10((4 * ladder.source[0]) / ladder.load[0]);
  for (const f of wanted.frequency.filter((_, i) => i % 6 === 2)) {
    const run = await simulateAc(ladderNetlist(built, f), { from: f, to: f, points: 1 });
    expect((run.level('out')[0] ?? 0) + ends).toBeCloseTo(slowGain(built, f), 5);
  }
}, 30_000);
