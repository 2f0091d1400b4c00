import { expect, test } from 'vitest';
import { cellSum } from '../../src/engine/errands/day/cellSum.ts';
import { type DayAnswer, grades, ways } from '../../src/engine/errands/day/dayAnswer.ts';
import { dayWork } from '../../src/engine/errands/day/dayWork.ts';
import { type Rig, withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';
import { pathReads } from '../../src/engine/stages/path/reads.ts';
import type { PathSeen } from '../../src/engine/stages/path/seen.ts';
import { workPath } from '../../src/engine/stages/path/work.ts';

const evaluate = createEvaluator(stages);

function seenOf(texts: Readonly<Record<string, string>>): PathSeen {
  let rig = examples[0] as Rig;
  for (const [path, text] of Object.entries(texts)) rig = withEntry(rig, path, text);
  const worked = evaluate(rig);
  const values = Object.entries(pathReads).map(([name, path]) => [
    name,
    valueAt(worked, path.replace('?', '')),
  ]);
  return Object.fromEntries(values) as unknown as PathSeen;
}

function dayOf(seen: PathSeen): DayAnswer {
  const work = dayWork(seen);
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}

const rigs = [
  { 'antenna.kind': 'dipole', 'antenna.far': 'same' },
  { 'antenna.kind': 'vertical', 'antenna.ground': 'sea', 'path.season': 'summer' },
  { 'path.gain': '0', 'path.sunspots': '120' },
  { 'feed.line': 'rg58', 'feed.farLine': 'window', 'path.farPlace': 'quietRural' },
];

test.each(rigs)('each cell is the sum that the Path sheet makes of it: %o', (texts) => {
  const seen = seenOf(texts);
  const day = dayOf(seen);
  const rows = day.distances.length;
  for (let at = 0; at < day.received.length; at += 11) {
    const level = day.received[at] ?? Number.NEGATIVE_INFINITY;
    if (!Number.isFinite(level)) continue;
    const way = ways[day.way[at] ?? 0];
    const { results } = workPath({
      ...seen,
      hour: day.hours[Math.floor(at / rows)] ?? 0,
      distance: day.distances[at % rows] ?? 0,
      route: way === 'ground' ? 'groundWave' : 'skyWave',
      layer: way === 'e' ? 'e' : 'f2',
      hops: way === 'ground' ? null : (day.hops[at] ?? 1),
    });
    expect(results.received).toBeCloseTo(level, 9);
    if (day.snr.length > 0) expect(results.snr).toBeCloseTo(day.snr[at] ?? 0, 9);
    expect(results.speech).toBe(grades[day.grade[at] ?? 0]);
    const sum = cellSum(day, at);
    expect(sum.map(({ item }) => item)).toEqual(results.sum?.map(({ item }) => item));
    sum.forEach(({ adds, level }, line) => {
      expect(adds ?? 0).toBeCloseTo(results.sum?.[line]?.adds ?? 0, 9);
      expect(level ?? 0).toBeCloseTo(results.sum?.[line]?.level ?? 0, 9);
    });
  }
});

test('no E layer at night, and it screens near stations from the high layer by day', () => {
  const day = dayOf(seenOf({ 'antenna.kind': 'dipole', 'path.season': 'summer' }));
  const rows = day.distances.length;
  const used = (hour: number) =>
    new Set(Array.from({ length: rows }, (_, d) => ways[day.way[hour * rows + d] ?? 0]));
  expect(used(0).has('e')).toBe(false);
  expect(used(12).has('e')).toBe(true);
});

test('the hours counted are those of the distance planned, not of the nearest of the map', () => {
  const at = (distance: string) => {
    const day = dayOf(seenOf({ 'antenna.kind': 'dipole', 'path.distance': `${distance} km` }));
    const row = day.distances.findIndex((d) => Math.abs(d / 1e3 - Number(distance)) < 0.6);
    const rows = day.distances.length;
    const open = Array.from(day.hours, (_, h) => (day.grade[h * rows + row] ?? 0) > 0);
    return [day.hoursOpen, open.filter(Boolean).length];
  };
  // 20 km times 500^(14/27) is 501.5 km: on the map itself both are counted alike.
  const exact = 20 * 500 ** (14 / 27);
  const [counted, onMap] = at(`${exact}`.slice(0, 12));
  expect(counted).toBe(onMap);
});
