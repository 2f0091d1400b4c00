import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readings } from '../../src/engine/stages/bench/inputs.ts';
import { judge } from '../../src/engine/stages/bench/judge.ts';
import { points } from '../../src/engine/stages/bench/points.ts';

test('every reading that can be typed belongs to a test point, and every point can be read', () => {
  const reads = new Set<string>(points.map((point) => point.read));
  expect([...reads].sort()).toEqual(Object.keys(readings).sort());
});

test('a reading has the unit of its table', () => {
  const unit = {
    supplies: 'V',
    currents: 'A',
    frequencies: 'Hz',
    widths: 'Hz',
    volts: 'Vpp',
    powers: 'W',
    levels: 'dB',
    harmonics: 'dBc',
  } as const;
  for (const { group, read, asVolts } of points) {
    const declared = readings[read as keyof typeof readings].unit;
    expect(declared, read).toBe(asVolts ? 'W' : unit[group]);
  }
});

test('each point says what a miss on its wrong side means', () => {
  for (const { point, sides, below, above } of points) {
    if (sides !== 'atMost') expect(below, point).not.toBe('');
    if (sides !== 'atLeast') expect(above, point).not.toBe('');
  }
});

test('no two points share a step within a table', () => {
  const seen = points.map(({ group, step }) => `${group} ${step}`);
  expect(new Set(seen).size).toBe(seen.length);
});

test('moving away from the expectation never makes a verdict better', () => {
  const rank = { holds: 0, close: 1, fails: 2 };
  const real = fc.double({ min: -100, max: 100, noNaN: true });
  const sides = fc.constantFrom('both' as const, 'atMost' as const, 'atLeast' as const);
  fc.assert(
    fc.property(real, fc.double({ min: 0, max: 20, noNaN: true }), real, sides, (e, t, d, side) => {
      const near = judge(e + d, e, t, side);
      const far = judge(e + 1.5 * d, e, t, side);
      expect(rank[far]).toBeGreaterThanOrEqual(rank[near]);
    }),
  );
});
