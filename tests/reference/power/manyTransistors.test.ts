import { describe, expect, test } from 'vitest';
import { lowpassFromPrototype } from '../../../src/engine/circuit/lowpassFromPrototype.ts';
import { capacitor, coil } from '../../../src/engine/circuit/outputLadder.ts';
import { ganged } from '../../../src/engine/circuit/power/ganged.ts';
import { balanceBench } from '../../../src/engine/circuit/power/harmonicBalance.ts';
import type { PushPull } from '../../../src/engine/circuit/power/powerCircuit.ts';
import { powerState } from '../../../src/engine/circuit/power/powerState.ts';
import { chebyshev } from '../../../src/engine/circuit/prototype.ts';
import { transistorModels } from '../../../src/engine/data/transistorModels.ts';
import { simulateReal, value } from '../simulator.ts';
import { circuitOf } from './solvedStage.ts';
import { type BuiltStage, fourier, ladderLines, modelCard } from './transientStage.ts';

// Every figure here is compared with a transient run of the circuit simulator with as many
// transistors as the stage has, each with its own emitter resistor and lead.

const none = Number.POSITIVE_INFINITY;
const frequency = 7e6;
const bench = balanceBench();
const db = (ratio: number) => 20 * Math.log10(ratio);
const size = (v: Float64Array, k: number) => Math.hypot(v[2 * k] ?? 0, v[2 * k + 1] ?? 0);

const ladder = (load: number, filtered: boolean): BuiltStage['ladder'] => ({
  branches: [
    capacitor('series', 10e-9, none),
    ...(filtered
      ? lowpassFromPrototype(chebyshev(5, 0.044).g.slice(1, 6), load, 8.4e6).map((v, i) =>
          i % 2 === 0 ? capacitor('shunt', v, none) : coil('series', v, none),
        )
      : []),
  ],
  ratio: 1,
  sourceResistance: none,
  sourceCapacitance: 0,
  load,
  reference: frequency,
});

/** What one side has; emitter resistor and lead are those of one transistor. */
const side: BuiltStage = {
  card: transistorModels.d139,
  frequency,
  supply: 12,
  feed: { l: 3e-6, r: 0.2 },
  emitter: { r: 1, l: 4e-9 },
  bias: { voltage: 0.85, resistance: 22 },
  shunt: 33,
  driver: { r: 8, l: 8e-9, c: 20e-9 },
  ladder: ladder(15, false),
  temperature: 27,
};

/** One side's lines: node names end in its number; the transistors' emitters are their own. */
function sideLines(b: BuiltStage, s: number, drive: string, areas: readonly number[]): string[] {
  return [
    drive,
    `rdrv${s} d${s} m${s} ${value(b.driver.r)}`,
    `ldrv${s} m${s} k${s} ${value(b.driver.l)}`,
    `cdrv${s} k${s} b${s} ${value(b.driver.c)}`,
    `rbias${s} vb b${s} ${value(b.bias.resistance)}`,
    `rshunt${s} b${s} 0 ${value(b.shunt)}`,
    `rfeed${s} vcc f${s} ${value(b.feed.r)}`,
    ...areas.flatMap((area, i) => [
      `q${s}${i} c${s} b${s} e${s}${i} final area=${value(area)}`,
      `remit${s}${i} e${s}${i} g${s}${i} ${value(b.emitter.r)}`,
      `lemit${s}${i} g${s}${i} 0 ${value(b.emitter.l)}`,
    ]),
  ];
}

const common = (b: BuiltStage) => [
  `vbias vb 0 ${value(b.bias.voltage)}`,
  `vcc vcc 0 ${value(b.supply)}`,
  `.model final npn(${modelCard(b.card)})`,
];

/** The last period of a run. */
async function lastPeriod(lines: readonly string[], b: BuiltStage, periods = 80) {
  const period = 1 / b.frequency;
  const run = await simulateReal(
    lines.join('\n'),
    `.tran ${value(period / 200)} ${value(periods * period)} ${value((periods - 2.1) * period)} ${value(period / 400)}`,
    `reltol=1e-5 abstol=1e-11 vntol=1e-8 chgtol=1e-15 method=trap temp=${b.temperature}`,
  );
  const spectrum = (name: string, back = 0) =>
    fourier(run.vector('time'), run.vector(name), (periods - back - 1) * period, period, 5);
  const rested = (name: string) => {
    const [now, before] = [spectrum(name), spectrum(name, 1)];
    expect(Math.max(...now.map((v, i) => Math.abs(v - (before[i] ?? 0))))).toBeLessThan(
      2e-3 * size(now, 1),
    );
    return now;
  };
  return { spectrum, rested };
}

/** Harmonics above −50 dBc that differ: by 0.3 dB in the fundamental, 1 dB in the others. */
function differing(name: string, ours: Float64Array, theirs: Float64Array, orders: number[]) {
  return orders.flatMap((k) => {
    const error = db(size(ours, k) / size(theirs, k));
    const counts = db(size(theirs, k) / size(theirs, 1)) > -50;
    return counts && !(Math.abs(error) < (k === 1 ? 0.3 : 1)) ? [[`${name} ${k}`, error]] : [];
  });
}

describe('transistors in parallel', () => {
  test.for([
    [2, 2, false],
    [3, 4, true],
  ] as const)('%d of them, drive %d V, filter %s', async ([count, drive, filtered]) => {
    const b = { ...side, ladder: ladder(filtered ? 12 : 15, filtered) };
    const run = await lastPeriod(
      [
        ...sideLines(
          b,
          1,
          `vdrv d1 0 dc 0 sin(0 ${value(drive)} ${value(frequency)})`,
          Array(count).fill(1),
        ),
        `lfeed1 f1 c1 ${value(b.feed.l)}`,
        ...common(b),
        ...ladderLines(b.ladder, 'c1', '0'),
      ],
      b,
    );
    const one = circuitOf(b, bench.fine.harmonics);
    const circuit = {
      ...one,
      model: ganged(one.model, count),
      emitter: { r: b.emitter.r / count, l: b.emitter.l / count },
    };
    const state = powerState(bench, circuit, drive, new Float64Array(2 * bench.fine.width));
    expect(state.converged).toBe(true);
    const orders = [1, 2, 3, 4, 5];
    expect([
      ...differing('antenna', state.antenna, run.rested('v(out)'), orders),
      ...differing('collector', state.collectorVoltage, run.rested('v(c1)'), orders),
    ]).toEqual([]);
    const current = -(run.spectrum('i(vcc)')[0] ?? 0);
    expect(Math.abs((state.collectorCurrent[0] ?? 0) / current - 1)).toBeLessThan(0.01);
  });
});

describe('push-pull', () => {
  /** Of the two halves of the primary: coupling, and what each has alone, H. */
  const coupling = 0.99;
  const half = 3e-6;
  const b: BuiltStage = { ...side, feed: { l: half * (1 + coupling), r: 0.2 } };
  const pushPull = (unlike: number): PushPull => ({ leakage: half * (1 - coupling), unlike });

  /** Area of the first side's transistor over that of the second. */
  const lines = (drive: number, load: BuiltStage['ladder'], area: number) => [
    ...sideLines(b, 1, `vdr1 d1 0 dc 0 sin(0 ${value(drive)} ${value(frequency)})`, [area]),
    ...sideLines(b, 2, `vdr2 0 d2 dc 0 sin(0 ${value(drive)} ${value(frequency)})`, [1]),
    // The currents into the collectors are looked at.
    `vc1 h1 c1 0`,
    `vc2 h2 c2 0`,
    `lh1 f1 h1 ${value(half)}`,
    `lh2 h2 f2 ${value(half)}`,
    // Wound one after the other round the tap: the dots follow.
    `kh lh1 lh2 ${value(coupling)}`,
    ...common(b),
    ...ladderLines(load, 'h1', 'h2'),
  ];
  const solved = (drive: number, load: BuiltStage['ladder'], unlike: number) => {
    const one = circuitOf({ ...b, ladder: load }, bench.fine.harmonics);
    const circuit = { ...one, pushPull: pushPull(unlike) };
    return powerState(bench, circuit, drive, new Float64Array(2 * bench.fine.width));
  };

  test.for([
    [1.5, 30, false],
    [3, 30, false],
    [2.5, 30, true],
  ] as const)(
    'drive %d V a side, %d Ω from collector to collector, filter %s',
    async ([drive, load, filtered]) => {
      const network = ladder(load, filtered);
      const run = await lastPeriod(lines(drive, network, 1), b);
      const state = solved(drive, network, 0);
      expect(state.converged).toBe(true);
      const antenna = run.rested('v(out)');
      expect([
        ...differing('antenna', state.antenna, antenna, [1, 3, 5]),
        ...differing('collector', state.collectorVoltage, run.rested('v(c1)'), [1, 2, 3, 4, 5]),
      ]).toEqual([]);
      // Alike sides cancel them.
      expect(db(size(antenna, 2) / size(antenna, 1))).toBeLessThan(-70);
      expect(size(state.antenna, 2)).toBe(0);
      const current = -(run.spectrum('i(vcc)')[0] ?? 0);
      expect(Math.abs((2 * (state.collectorCurrent[0] ?? 0)) / current - 1)).toBeLessThan(0.01);
    },
  );

  // Half the difference of the two sides' even currents over their mean is what “unlike” means.
  test.for([
    [1.5, 1.1],
    [2, 0.8],
  ] as const)('drive %d V, one transistor of %d times the area', async ([drive, area]) => {
    const network = ladder(30, false);
    const run = await lastPeriod(lines(drive, network, area), b);
    const [first, second] = [run.spectrum('i(vc1)'), run.spectrum('i(vc2)')];
    const part = (sign: 1 | -1, k: number) =>
      Math.hypot(
        (first[2 * k] ?? 0) + sign * (second[2 * k] ?? 0),
        (first[2 * k + 1] ?? 0) + sign * (second[2 * k + 1] ?? 0),
      ) / 2;
    const antenna = run.rested('v(out)');
    const unlike = part(-1, 2) / part(1, 2);
    // The emitter resistors leave less of it than the areas have.
    expect(unlike).toBeLessThan(Math.abs(area - 1) / (area + 1));
    const state = solved(drive, network, unlike);
    expect(Math.abs(db(size(state.antenna, 2) / size(antenna, 2)))).toBeLessThan(1);
  });
});
