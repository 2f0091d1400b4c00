import { describe, expect, test } from 'vitest';
import { denseSolve } from '../../../src/engine/circuit/denseSolve.ts';
import { halfWave } from '../../../src/engine/circuit/halfWave.ts';
import { capacitor, coil } from '../../../src/engine/circuit/outputLadder.ts';
import { balanceDesk, waveOf } from '../../../src/engine/circuit/power/balanceDesk.ts';
import { balanceJacobian, balanceResidual } from '../../../src/engine/circuit/power/balanceStep.ts';
import { gummelPoonAt } from '../../../src/engine/circuit/power/gummelPoonAt.ts';
import { balanceBench } from '../../../src/engine/circuit/power/harmonicBalance.ts';
import { powerBudget } from '../../../src/engine/circuit/power/powerBudget.ts';
import {
  blankSurroundings,
  powerSurroundings,
} from '../../../src/engine/circuit/power/powerCircuit.ts';
import { powerState } from '../../../src/engine/circuit/power/powerState.ts';
import { transistorModels } from '../../../src/engine/data/transistorModels.ts';
import { circuitOf } from './solvedStage.ts';

const none = Number.POSITIVE_INFINITY;
const { l, c } = halfWave(50, 7e6);
const built = {
  card: transistorModels.d139,
  frequency: 7e6,
  supply: 13.8,
  feed: { l: 5e-6, r: 0.2 },
  emitter: { r: 0.47, l: 3e-9 },
  bias: { voltage: 0.8, resistance: 47 },
  shunt: 33,
  driver: { r: 12, l: 10e-9, c: 20e-9 },
  ladder: {
    branches: [
      capacitor('series', 10e-9, none),
      capacitor('shunt', c, 500),
      coil('series', l, 120),
      capacitor('shunt', c, 500),
    ],
    ratio: 1.5,
    sourceResistance: none,
    sourceCapacitance: 0,
    load: 50,
    reference: 7e6,
  },
  temperature: 50,
};

/** Numbers that look random and are always the same. */
function scatter(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 31 - 1;
  };
}

// Source: differences of the residual itself.
test('Jacobian against differences', () => {
  const desk = balanceDesk(15, 90);
  const model = gummelPoonAt(built.card, 330);
  const around = powerSurroundings(circuitOf(built, 15), 2, blankSurroundings(15));
  const next = scatter(7);
  const size = 2 * desk.width;
  const x = Float64Array.from({ length: size }, () => 0.02 * next());
  x[0] = 0.6;
  x[1] = 0.15;
  x[desk.width] = -5;
  x[desk.width + 1] = 5.5;
  balanceResidual(desk, model, around, x);
  balanceJacobian(desk, around);
  const jacobian = Float64Array.from(desk.matrix);
  const h = 1e-6;
  let worst = 0;
  for (let j = 0; j < size; j += 1) {
    const moved = (by: number) => {
      const there = Float64Array.from(x);
      there[j] = (there[j] ?? 0) + by;
      balanceResidual(desk, model, around, there);
      return Float64Array.from(desk.residual);
    };
    const [less, more] = [moved(-h), moved(h)];
    for (let i = 0; i < size; i += 1) {
      const difference = ((more[i] ?? 0) - (less[i] ?? 0)) / (2 * h);
      const off = Math.abs(difference - (jacobian[i * size + j] ?? 0));
      worst = Math.max(worst, off / (1 + Math.abs(difference)));
    }
  }
  expect(worst).toBeLessThan(1e-6);
});

// Source: conservation of energy. The transistor's heat is taken from its waveforms and series
// resistances here, not from its terminals.
describe('direct power in is radio power and heat out', () => {
  test.for([0.5, 1.5, 3, 6])('drive %d V', (drive) => {
    const bench = balanceBench();
    const circuit = circuitOf(built, bench.fine.harmonics);
    const x = new Float64Array(2 * bench.fine.width);
    const state = powerState(bench, circuit, drive, x);
    expect(state.converged).toBe(true);
    const powers = powerBudget(circuit, state);
    const { waves, samples, harmonics } = bench.fine;
    waveOf(bench.fine, x, 0, waves.vbe);
    waveOf(bench.fine, x, bench.fine.width, waves.vbc);
    let heat = 0;
    for (let n = 0; n < samples; n += 1) {
      heat += (waves.vbe[n] ?? 0) * (waves.ibe[n] ?? 0) + (waves.vbc[n] ?? 0) * (waves.ibc[n] ?? 0);
    }
    heat /= samples;
    const { rb, re, rc } = circuit.model;
    for (const [r, i] of [
      [rb, state.baseCurrent],
      [re, state.emitterCurrent],
      [rc, state.collectorCurrent],
    ] as const) {
      heat += r * (i[0] ?? 0) ** 2;
      for (let k = 2; k < 2 * (harmonics + 1); k += 1) heat += (r * (i[k] ?? 0) ** 2) / 2;
    }
    const into = powers.supply + powers.bias + powers.driver;
    const out =
      powers.fundamental +
      powers.harmonics +
      powers.network +
      powers.feed +
      powers.emitter +
      powers.base +
      heat;
    expect(Math.abs(out / into - 1)).toBeLessThan(1e-6);
    expect(Math.abs(powers.transistor / heat - 1)).toBeLessThan(1e-4);
    expect(Math.min(powers.network, powers.feed, powers.base, powers.harmonics)).toBeGreaterThan(0);
  });
});

// Source: the equations themselves, put back.
test('the solver pivots, and says when it cannot', () => {
  // 2y + z = 8, x + y + z = 6, 2x + 3z = 11.
  const b = Float64Array.of(8, 6, 11);
  expect(denseSolve(Float64Array.of(0, 2, 1, 1, 1, 1, 2, 0, 3), b, 3)).toBe(true);
  const [x = 0, y = 0, z = 0] = b;
  expect(2 * y + z).toBeCloseTo(8, 12);
  expect(x + y + z).toBeCloseTo(6, 12);
  expect(2 * x + 3 * z).toBeCloseTo(11, 12);
  expect(denseSolve(Float64Array.of(1, 2, 2, 4), Float64Array.of(1, 1), 2)).toBe(false);
  expect(denseSolve(Float64Array.of(Number.NaN, 2, 2, 4), Float64Array.of(1, 1), 2)).toBe(false);
});
