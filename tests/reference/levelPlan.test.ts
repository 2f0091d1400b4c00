import { expect, test } from 'vitest';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';
import { levelPlan } from '../../src/engine/stages/transmit/levelPlan.ts';

// Common practice, no source: the usual plan of a 5 W rig with diode mixers, level and gain of each
// stage as builders note them, whole decibels.
const plan = [
  ['crystal filter', -3, -25],
  ['two-way amplifier', 16, -9],
  ['mixer', -7, -16],
  ['band-pass filter', -3, -19],
  ['first pre-driver', 16, -3],
  ['second pre-driver', 14, 11],
  ['driver', 12, 23],
  ['final', 14.3, 37.3],
  ['low-pass filter', -0.3, 37],
] as const;

test('the usual plan of a 5 W rig closes: −22 dBm at the modulator, 59 dB to +37 dBm', () => {
  const { onward, levels } = levelPlan(
    plan.map(([, gain]) => gain),
    37,
  );
  expect(onward[0]).toBeCloseTo(59, 9);
  expect(levels[0]).toBeCloseTo(-22, 9);
  plan.forEach(([name, , level], i) => {
    expect(levels[i + 1], name).toBeCloseTo(level, 9);
  });
});

interface Row {
  readonly point: string;
  readonly level: number;
  readonly gain: number;
  readonly clip: number | null;
  readonly forward: number;
  readonly carrier: number | null;
}

const worked = examples.map((rig) => createEvaluator(stages)(rig));
const rowsOf = (one: (typeof worked)[number]) => valueAt(one, 'transmit.chain') as readonly Row[];

// By hand: decibels add up along the chain whichever way it is gone.
test('forwards and backwards meet where the volume is turned down by what there is to spare', () => {
  for (const one of worked) {
    const rows = rowsOf(one);
    const spare = Number(valueAt(one, 'transmit.volumeDown'));
    let sum = rows[0]?.level ?? Number.NaN;
    rows.slice(0, -1).forEach(({ gain }, i) => {
      sum += gain;
      expect(sum).toBeCloseTo(rows[i + 1]?.level ?? Number.NaN, 8);
      const { clip, forward } = rows[i + 1] ?? { clip: null, forward: Number.NaN };
      // As built, nothing passes a limit, and nothing is more than the gain to spare above the plan.
      if (clip !== null) expect(forward).toBeLessThanOrEqual(clip + 1e-9);
      expect(forward).toBeLessThanOrEqual(sum + Math.max(0, spare) + 1e-9);
    });
  }
});

test('the carrier in the last row is null and filter below the power, and so many watts', () => {
  for (const one of worked) {
    const last = rowsOf(one).at(-1);
    const below = Number(valueAt(one, 'transmit.carrierSuppression'));
    const watts = Number(valueAt(one, 'transmit.carrierPower'));
    expect((last?.level ?? 0) - (last?.carrier ?? 0)).toBeCloseTo(below, 9);
    expect(10 * Math.log10(watts / 1e-3)).toBeCloseTo(last?.carrier ?? 0, 9);
  }
});
