import { describe, expect, test } from 'vitest';
import type { Ladder } from '../../../src/engine/circuit/ladder.ts';
import { gainAt } from '../../../src/engine/circuit/ladderGain.ts';
import { withEntry } from '../../../src/engine/rig/document.ts';
import { createEvaluator } from '../../../src/engine/rig/evaluate.ts';
import { examples } from '../../../src/engine/rig/examples.ts';
import { stages } from '../../../src/engine/rig/stages.ts';
import { valueAt } from '../../../src/engine/rig/worked.ts';
import { simulateAc } from '../simulator.ts';
import { ladderNetlist } from './ladderNetlist.ts';

const upToFilter = stages.slice(0, stages.findIndex(({ fields }) => fields.key === 'filter') + 1);

function work(entries: Readonly<Record<string, string>>) {
  const [example] = examples;
  if (!example) throw new Error('no example');
  const rig = Object.entries({ 'filter.capacitorQ': '1M', ...entries }).reduce(
    (one, [path, text]) => withEntry(one, path, text),
    example,
  );
  const worked = createEvaluator(upToFilter)(rig);
  return {
    of: <T = number>(key: string) => valueAt(worked, `filter.${key}`) as T,
    problems: worked.stages.filter?.problems ?? [],
  };
}

/** The netlist has capacitors without loss. */
const lossless = (ladder: Ladder): Ladder => ({ ...ladder, capacitorQ: Number.POSITIVE_INFINITY });

const levelOf = async (ladder: Ladder, f: number) => {
  const run = await simulateAc(ladderNetlist(ladder, f), { from: f, to: f, points: 1 });
  const ends = 10 * Math.log10((4 * ladder.source[0]) / ladder.load[0]);
  return (run.level('out')[0] ?? 0) + ends;
};

describe('leakage past the filter', () => {
  // Source: ngspice, a capacitor between the ends and nothing else.
  test('the capacitance loses what was measured with the crystals taken out', async () => {
    const { of } = work({ 'filter.leakageDb': '72', 'filter.sourceResistance': '300' });
    const { source, load, leakage } = of<Ladder>('ladder');
    const f = of('alignment');
    const lines = [
      'v1 e 0 dc 0 ac 1',
      `rs e in ${source[0]}`,
      `c1 in out ${leakage}`,
      `rl out 0 ${load[0]}`,
      'rb in 0 1e15',
    ];
    const run = await simulateAc(lines.join('\n'), { from: f, to: f, points: 1 });
    const gain = (run.level('out')[0] ?? 0) + 10 * Math.log10((4 * source[0]) / load[0]);
    expect(gain).toBeCloseTo(-72, 4);
    expect(of('leakageFound')).toBe(leakage);
  });

  // Source: ngspice on the whole filter, far out on both sides.
  test('the stopband lies on the floor that is given', async () => {
    const { of } = work({ 'filter.leakageDb': '60' });
    const ladder = of<Ladder>('ladder');
    for (const far of [-12, 12]) {
      const level = await levelOf(ladder, of('centre') + far * of('width3'));
      expect(Math.abs(level + of('loss') + of('floor'))).toBeLessThan(0.7);
    }
  });

  test('either entry gives the other', () => {
    const { of } = work({ 'filter.leakageDb': '80' });
    const again = work({ 'filter.leakage': String(of('leakageFound')) });
    expect(again.of('floor')).toBeCloseTo(of('floor'), 3);
  });

  test('both at once, and what cannot be, are put in words', () => {
    const twice = work({ 'filter.leakageDb': '70', 'filter.leakage': '5f' });
    expect(twice.problems[0]).toMatchObject({ field: 'filter.leakage', weight: 'stops' });
    expect(twice.of('floor')).toBeNull();
    const never = work({
      'filter.leakageDb': '10',
      'filter.sourceResistance': '100k',
      'filter.loadResistance': '1',
    });
    expect(never.problems[0]).toMatchObject({ field: 'filter.leakageDb', weight: 'stops' });
  });
});

// Source: closed form, (300 + j200) Ω is 433.3 Ω beside j650 Ω; ngspice for the response.
test('complex ends', async () => {
  const { of } = work({
    'filter.sourceResistance': '300',
    'filter.sourceReactance': '200',
    'filter.loadReactance': '-150',
  });
  const w = 2 * Math.PI * of('centre');
  expect(of('sourceParallelR')).toBeCloseTo(433.333, 3);
  expect(w * of('sourceParallelL')).toBeCloseTo(650, 6);
  expect(of('sourceParallelC')).toBeNull();
  const r = of('ends');
  expect(1 / (w * of('loadParallelC'))).toBeCloseTo((r * r + 150 * 150) / 150, 6);
  const ladder = lossless(of<Ladder>('ladder'));
  for (const f of [of('low3'), of('peak'), of('high6')]) {
    expect(gainAt(ladder, f)).toBeCloseTo(await levelOf(ladder, f), 5);
  }
});

describe('crystals from the bag', () => {
  const bag = [36, -120, 165, 9, -54, 90, -180, 24]
    .map((off, i) => `${'ABCDEFGH'[i]}, ${7_199_000 + off}, ${30 + 0.02 * i}m`)
    .join('\n');
  const placed = { 'bag.crystals': bag, 'filter.chosen': 'c a f d b e' };

  test('stand in the filter in their order, each with what was measured of it', () => {
    const { of, problems } = work(placed);
    expect(problems).toEqual([]);
    const ladder = of<Ladder>('ladder');
    const fs = Array.from(
      ladder.lm,
      (lm, i) => 1 / (2 * Math.PI * Math.sqrt(lm * (ladder.cm[i] ?? 0))),
    );
    [165, 36, 90, 9, -120, -54].forEach((off, i) => {
      expect(fs[i]).toBeCloseTo(7_199_000 + off, 3);
    });
    expect(Array.from(ladder.lm)).toEqual([0.03004, 0.03, 0.0301, 0.03006, 0.03002, 0.03008]);
    expect(of('crystalFs')).toBeCloseTo(7_199_021, 6);
    const rows = of<readonly { label: string; off: number }[]>('places');
    expect(rows.map(({ label }) => label)).toEqual(['C', 'A', 'F', 'D', 'B', 'E']);
    expect(rows.reduce((sum, { off }) => sum + off, 0)).toBeCloseTo(0, 6);
  });

  // Source: ngspice on the ladder of unlike crystals.
  test('a capacitor for each brings the response back to that of alike crystals', async () => {
    const fits = (entries: Readonly<Record<string, string>>) =>
      work({ ...placed, ...entries }).of<readonly { way: string; departure: number }[]>('fits');
    const design = fits({})[1]?.departure ?? 0;
    const each = fits({ 'filter.aligning': 'each' })[1]?.departure ?? 1;
    expect(each).toBeLessThan(0.5 * design);
    const { of } = work({ ...placed, 'filter.aligning': 'each', 'filter.fitted': 'e12' });
    const ladder = lossless(of<Ladder>('ladder'));
    for (const f of [of('low6'), of('peak'), of('high3')]) {
      expect(gainAt(ladder, f)).toBeCloseTo(await levelOf(ladder, f), 5);
    }
  });

  test.each([
    ['a b c d e z', /“z” is not in the bag/],
    ['a b c d e a', /a stands at two places/],
    ['a b c', /has 6 crystals, and 3 are named/],
  ])('%s: wrong, in words, and all are taken as alike', (chosen, says) => {
    const { of, problems } = work({ ...placed, 'filter.chosen': chosen });
    expect(problems[0]).toMatchObject({ field: 'filter.chosen', weight: 'stops' });
    expect(problems[0]?.says).toMatch(says);
    expect(of('width3')).toBeCloseTo(2400, 2);
    expect(of('places')).toBeNull();
  });
});

// Source: counting.
test('what the filter lacks of owned capacitors is named', () => {
  const { problems, of } = work({ 'filter.fitted': 'own', 'filter.owned': '47p 2, 68p 3, 180p' });
  expect(problems[0]).toMatchObject({ field: 'filter.owned', weight: 'stops' });
  expect(problems[0]?.says).toMatch(/9 capacitors are needed, 6 are listed. Missing: \d of about/);
  const stock = of<readonly { used: number; left: number }[]>('stock');
  expect(stock.map(({ used }) => used)).toEqual([2, 3, 1]);
  expect(stock.map(({ left }) => left)).toEqual([0, 0, 0]);
});
