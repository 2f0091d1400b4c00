import { describe, expect, test } from 'vitest';
import { halfWave } from '../../../src/engine/circuit/halfWave.ts';
import { lowpassFromPrototype } from '../../../src/engine/circuit/lowpassFromPrototype.ts';
import { capacitor, coil, type LadderBranch } from '../../../src/engine/circuit/outputLadder.ts';
import { piMatch } from '../../../src/engine/circuit/piMatch.ts';
import { balanceBench } from '../../../src/engine/circuit/power/harmonicBalance.ts';
import { powerState } from '../../../src/engine/circuit/power/powerState.ts';
import { chebyshev } from '../../../src/engine/circuit/prototype.ts';
import { transistorModels } from '../../../src/engine/data/transistorModels.ts';
import { circuitOf } from './solvedStage.ts';
import { type BuiltStage, transientStage } from './transientStage.ts';

// Every figure here is compared with a transient run of the circuit simulator: the same parts, the
// same model card, the last of enough periods (the one before must be equal).

/** Until a tuned load, or another, has come to rest. */
const PERIODS = { tuned: 160, other: 60 };

const none = Number.POSITIVE_INFINITY;
const blocking = capacitor('series', 10e-9, none);
const ladderOf = (branches: readonly LadderBranch[], load: number) => ({
  branches: [blocking, ...branches],
  ratio: 1,
  sourceResistance: none,
  sourceCapacitance: 0,
  load,
  reference: 7e6,
});

const final: BuiltStage = {
  card: transistorModels.d139,
  frequency: 7e6,
  supply: 12,
  feed: { l: 5e-6, r: 0.2 },
  emitter: { r: 0.47, l: 3e-9 },
  bias: { voltage: 0.75, resistance: 47 },
  shunt: 33,
  driver: { r: 12, l: 10e-9, c: 20e-9 },
  ladder: ladderOf([], 30),
  temperature: 27,
};
const small: BuiltStage = {
  ...final,
  card: transistorModels.n2222,
  frequency: 3.5e6,
  feed: { l: 10e-6, r: 0.5 },
  emitter: { r: 2.2, l: 0 },
  bias: { voltage: 0.9, resistance: 220 },
  shunt: 150,
  driver: { r: 50, l: 20e-9, c: 20e-9 },
  ladder: ladderOf([], 100),
};

/** A coil and a capacitor across the load, Q 4 at the fundamental. */
const tuned = (load: number, frequency: number) => {
  const x = load / 4;
  const w = 2 * Math.PI * frequency;
  return ladderOf([coil('shunt', x / w, none), capacitor('shunt', 1 / (w * x), none)], load);
};
/** Resistance in the feed lets feed and blocking capacitor ring out, which nothing else damps. */
const damped = { ...final, feed: { l: 5e-6, r: 3 }, ladder: tuned(30, 7e6) };
const parts = (values: readonly number[]) =>
  values.map((v, i) => (i % 2 === 0 ? capacitor('shunt', v, none) : coil('series', v, none)));
const pi = () => {
  const { sourceC, l, loadC } = piMatch(25, 50, 3, 7e6);
  return ladderOf(parts([sourceC, l, loadC]), 50);
};
const doubleHalfWave = () => {
  const { l, c } = halfWave(50, 7e6);
  return ladderOf(parts([c, l, 2 * c, l, c]), 50);
};
const chebyshevFive = () =>
  ladderOf(parts(lowpassFromPrototype(chebyshev(5, 0.044).g.slice(1, 6), 50, 8.4e6)), 50);

/** Bias V × drive V peak, and what the collector works into. */
const cases: readonly (readonly [string, BuiltStage, number])[] = [
  ...[0.3, 0.75, 0.95].flatMap((voltage) =>
    [1.5, 3, 5].map(
      (drive) =>
        [
          `resistive load, bias ${voltage} V, drive ${drive} V`,
          { ...final, bias: { ...final.bias, voltage } },
          drive,
        ] as const,
    ),
  ),
  ['tuned load, below saturation', damped, 1.5],
  ['tuned load, saturated', damped, 4],
  ['a small driver', small, 1],
  ['a small driver, hard driven and hot', { ...small, temperature: 85 }, 4],
  ['pi match', { ...final, ladder: pi() }, 3],
  ['two half-wave sections', { ...final, ladder: doubleHalfWave() }, 2],
  ['Chebyshev filter of five elements', { ...final, ladder: chebyshevFive() }, 2],
];

describe('steady state of a power stage against the simulator', () => {
  const bench = balanceBench();
  test.for(cases)('%s', async ([title, built, drive]) => {
    const periods = title.startsWith('tuned') ? PERIODS.tuned : PERIODS.other;
    const circuit = circuitOf(built, bench.fine.harmonics);
    const state = powerState(bench, circuit, drive, new Float64Array(2 * bench.fine.width));
    expect(state.converged).toBe(true);
    const run = await transientStage(built, drive, periods, 5);
    expect(run.unrest).toBeLessThan(1e-3);
    const size = (v: Float64Array, k: number) => Math.hypot(v[2 * k] ?? 0, v[2 * k + 1] ?? 0);
    const db = (ratio: number) => 20 * Math.log10(ratio);
    const off: Record<string, number> = {};
    for (const [name, ours, theirs] of [
      ['antenna', state.antenna, run.antenna],
      ['collector', state.collectorVoltage, run.collector],
    ] as const) {
      for (let k = 1; k <= 5; k += 1) {
        const level = db(size(theirs, k) / size(theirs, 1));
        const error = db(size(ours, k) / size(theirs, k));
        if (level > -50 && !(Math.abs(error) < (k === 1 ? 0.3 : 1))) off[`${name} ${k}`] = error;
      }
    }
    expect(off).toEqual({});
    // Twenty harmonics leave up to 0.7 % in the direct current of a hard saturated stage.
    expect(Math.abs((state.collectorCurrent[0] ?? 0) / run.supplyCurrent - 1)).toBeLessThan(0.01);
  });
});
