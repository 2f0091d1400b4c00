import { expect, test } from 'vitest';
import { capacitor } from '../../../src/engine/circuit/outputLadder.ts';
import { balanceBench } from '../../../src/engine/circuit/power/harmonicBalance.ts';
import { powerBudget } from '../../../src/engine/circuit/power/powerBudget.ts';
import { sidesOf } from '../../../src/engine/circuit/power/powerCircuit.ts';
import { powerState } from '../../../src/engine/circuit/power/powerState.ts';
import { transistorModels } from '../../../src/engine/data/transistorModels.ts';
import { sagging } from '../../../src/engine/errands/power/sagging.ts';
import { circuitOf } from './solvedStage.ts';

const none = Number.POSITIVE_INFINITY;
const bench = balanceBench();
const one = circuitOf(
  {
    card: transistorModels.d139,
    frequency: 7e6,
    supply: 12,
    feed: { l: 5e-6, r: 0.2 },
    emitter: { r: 0.47, l: 3e-9 },
    bias: { voltage: 0.75, resistance: 47 },
    shunt: 33,
    driver: { r: 12, l: 10e-9, c: 20e-9 },
    ladder: {
      branches: [capacitor('series', 10e-9, none)],
      ratio: 1,
      sourceResistance: none,
      sourceCapacitance: 0,
      load: 30,
      reference: 7e6,
    },
    temperature: 50,
  },
  bench.fine.harmonics,
);

// Source: Ohm's law; and a stiff supply of the voltage that is left makes the same power.
test.for([
  ['one side', one],
  ['push-pull', { ...one, pushPull: { leakage: 5e-8, unlike: 0.05 } }],
] as const)('a supply that gives way, %s', ([, circuit]) => {
  const x = new Float64Array(2 * bench.fine.width);
  const stiff = powerBudget(circuit, powerState(bench, circuit, 4, x)).fundamental;
  expect(sagging(bench, circuit, 4, 0, stiff, x)).toBeNull();
  const sag = sagging(bench, circuit, 4, 1.5, stiff, x);
  expect(sag?.power).toBeLessThan(stiff);
  expect(sag?.lost).toBeCloseTo(10 * Math.log10((sag?.power ?? 0) / stiff), 12);
  const less = { ...circuit, supply: sag?.supply ?? 0 };
  const state = powerState(bench, less, 4, new Float64Array(2 * bench.fine.width));
  expect(powerBudget(less, state).fundamental / (sag?.power ?? 0)).toBeCloseTo(1, 6);
  const current = sidesOf(circuit) * (state.collectorCurrent[0] ?? 0);
  expect(12 - 1.5 * current).toBeCloseTo(sag?.supply ?? 0, 6);
});
