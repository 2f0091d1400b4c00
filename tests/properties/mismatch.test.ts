import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Rig } from '../../src/engine/rig/document.ts';
import { withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';
import { randomRig } from '../laws/randomRig.ts';

interface Row {
  readonly swr: number;
  readonly margin: number | null;
  readonly marginSame: number | null;
  readonly marginAny: number | null;
  readonly loss: number;
  readonly power: number;
  readonly collector: number;
  readonly heat: number;
}

const rig = fc.oneof(fc.constantFrom(...examples), randomRig);
const evaluate = createEvaluator(stages);
const at = (given: Rig, path: string) => valueAt(evaluate(given), path);

test('a ratio of one is the Network leaf again', () => {
  fc.assert(
    fc.property(rig, (given) => {
      const [matched] = (at(given, 'mismatch.worst') as readonly Row[] | null) ?? [];
      if (matched === undefined) return;
      const near = (ours: number, path: string) => {
        const sheet = at(given, path) as number;
        expect(Math.abs(ours - sheet)).toBeLessThanOrEqual(1e-8 * Math.max(1, Math.abs(sheet)));
      };
      near(matched.power, 'output.pepAntenna');
      near(matched.loss, 'output.loss');
      if (matched.margin !== null) near(matched.margin, 'output.worstMargin');
    }),
    { numRuns: 40 },
  );
});

test('a higher ratio is never better: wider circles hold the smaller in loss, power and volts', () => {
  fc.assert(
    fc.property(rig, fc.double({ min: 1, max: 3, noNaN: true }), (given, swr) => {
      const typed = withEntry(given, 'mismatch.swr', swr.toPrecision(4));
      const rows = (at(typed, 'mismatch.worst') as readonly Row[] | null) ?? [];
      rows.forEach((row, i) => {
        const before = rows[i - 1];
        if (before === undefined) return;
        // Steps of 5° leave out a thousandth at most.
        expect(row.loss).toBeGreaterThanOrEqual(before.loss * 0.999 - 1e-9);
        expect(row.power).toBeLessThanOrEqual(before.power * 1.002);
        expect(row.collector).toBeGreaterThanOrEqual(before.collector * 0.999);
      });
      for (const row of rows) {
        if (row.margin === null) continue;
        expect(row.marginSame ?? 0).toBeLessThanOrEqual(row.margin + 1e-9);
        if (row.marginAny !== null) {
          expect(row.marginAny).toBeLessThanOrEqual((row.marginSame ?? 0) + 1e-9);
        }
        expect(row.heat).toBeGreaterThanOrEqual(-1e-9);
      }
    }),
    { numRuns: 40 },
  );
});

// Closed form: held by the supply, no collector swings up further than it can swing down.
test('with the drive held no collector passes twice the supply less its saturation', () => {
  fc.assert(
    fc.property(rig, fc.constantFrom('single', 'parallel', 'pushPull'), (given, form) => {
      const formed = withEntry(given, 'transmit.finalForm', form);
      const held = at(formed, 'mismatch.collectorHeld') as number | null;
      if (held === null) return;
      const most =
        2 * (at(formed, 'plan.supply') as number) - (at(formed, 'transmit.saturation') as number);
      expect(held).toBeLessThanOrEqual(most * (1 + 1e-9));
    }),
    { numRuns: 40 },
  );
});

// Closed form: a Möbius transformation takes circles to circles.
test('the load goes round a circle', () => {
  for (const swr of ['1.3', '2', '3']) {
    const typed = withEntry(examples[0] as Rig, 'mismatch.swr', swr);
    const { resistance, reactance } = at(typed, 'mismatch.around') as {
      readonly resistance: Float64Array;
      readonly reactance: Float64Array;
    };
    const [p, q, r] = [0, 24, 48].map((k) => [resistance[k] ?? 0, reactance[k] ?? 0] as const);
    if (!p || !q || !r) throw new Error('no three points');
    const d = 2 * (p[0] * (q[1] - r[1]) + q[0] * (r[1] - p[1]) + r[0] * (p[1] - q[1]));
    const s = ([x, y]: readonly [number, number]) => x * x + y * y;
    const x = (s(p) * (q[1] - r[1]) + s(q) * (r[1] - p[1]) + s(r) * (p[1] - q[1])) / d;
    const y = (s(p) * (r[0] - q[0]) + s(q) * (p[0] - r[0]) + s(r) * (q[0] - p[0])) / d;
    const radius = Math.hypot(p[0] - x, p[1] - y);
    resistance.forEach((value, k) => {
      expect(Math.hypot(value - x, (reactance[k] ?? 0) - y) / radius).toBeCloseTo(1, 9);
    });
  }
});
