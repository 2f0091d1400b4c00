import { describe, expect, test } from 'vitest';
import { cosinePulse } from '../../../src/engine/circuit/conduction.ts';
import { biasFor } from '../../../src/engine/circuit/power/biasFor.ts';
import {
  envelopeDrives,
  envelopeProducts,
} from '../../../src/engine/circuit/power/envelopeProducts.ts';
import { type GummelPoon, VOLT_PER_KELVIN } from '../../../src/engine/circuit/power/gummelPoon.ts';
import { gummelPoonAt } from '../../../src/engine/circuit/power/gummelPoonAt.ts';
import { balanceBench } from '../../../src/engine/circuit/power/harmonicBalance.ts';
import type { PowerCircuit } from '../../../src/engine/circuit/power/powerCircuit.ts';
import { powerState } from '../../../src/engine/circuit/power/powerState.ts';
import { transistorModels } from '../../../src/engine/data/transistorModels.ts';

const none = Number.POSITIVE_INFINITY;

/** No capacitances, no base current, no series resistances, no Early effect. */
const ideal: GummelPoon = {
  ...gummelPoonAt(transistorModels.n2222, 300.15),
  is: 1e-14,
  bf: 1e9,
  ise: 0,
  vaf: none,
  var: none,
  ikf: none,
  ikr: none,
  rb: 0,
  re: 0,
  rc: 0,
  cje: 0,
  cjc: 0,
  tf: 0,
  tr: 0,
  temperature: 300.15,
};

/** A stage with a resistive load of any size at every harmonic, driven without resistance. */
function stage(model: GummelPoon, harmonics: number, load: number, emitter: number): PowerCircuit {
  const every = (r: number) =>
    Float64Array.from({ length: 2 * (harmonics + 1) }, (_, i) => (i % 2 === 0 ? r : 0));
  return {
    frequency: 1e6,
    model,
    supply: 2000,
    feed: { l: 1, r: 1e-3 },
    emitter: { r: emitter, l: 0 },
    bias: { voltage: 0, resistance: 1e-3, across: none },
    shunt: none,
    driver: every(1e-3),
    network: { input: every(load), transfer: every(load), load },
  };
}

// Source: closed forms of the clipped cosine. An emitter resistor that takes 300 V makes the
// exponential a switch; what is left of it widens the angle by parts of a percent.
describe('a near-ideal transistor clips a cosine', () => {
  const harmonics = 60;
  const bench = balanceBench(harmonics);
  const drive = 300;
  const emitter = 300;
  test.for([
    // degrees, I0, I1, I2, I3 over Imax
    [270, 0.4425, 0.5326, 0.0439, -0.0311],
    [180, 0.3183, 0.5, 0.2122, 0],
    [120, 0.218, 0.391, 0.2757, 0.1378],
    [90, 0.1649, 0.3102, 0.2562, 0.1811],
  ] as const)('%d degrees', ([degrees, ...table]) => {
    const half = (degrees / 2) * (Math.PI / 180);
    const threshold = 0.75;
    const voltage = threshold - drive * Math.cos(half);
    const circuit = stage(ideal, harmonics, 10, emitter);
    const state = powerState(
      bench,
      { ...circuit, bias: { ...circuit.bias, voltage } },
      drive,
      new Float64Array(2 * bench.fine.width),
    );
    expect(state.converged).toBe(true);
    const peak = (drive / emitter) * (1 - Math.cos(half));
    table.forEach((share, k) => {
      const sign = Math.sign(state.collectorCurrent[2 * k] ?? 0);
      const size = Math.hypot(
        state.collectorCurrent[2 * k] ?? 0,
        state.collectorCurrent[2 * k + 1] ?? 0,
      );
      expect((sign * size) / peak).toBeCloseTo(share, 2.3);
      expect(cosinePulse(2 * half, k)).toBeCloseTo(share, 4);
    });
  });
});

// Source: small-signal gain −gm·RL and the exponential's own second harmonic, V/(4·VT) of the
// fundamental, third V²/(24·VT²) (modified Bessel functions I_n for small arguments).
test('small drive: gain and harmonics of the exponential', () => {
  const bench = balanceBench(12);
  const circuit = stage(ideal, 12, 50, 0);
  const standing = 1e-2;
  const voltage = biasFor(bench, circuit, standing);
  expect(voltage).not.toBeNull();
  const vt = VOLT_PER_KELVIN * 300.15;
  expect(voltage ?? 0).toBeCloseTo(vt * Math.log(standing / 1e-14 + 1), 6);
  const drive = vt / 50;
  const state = powerState(
    bench,
    { ...circuit, bias: { ...circuit.bias, voltage: voltage ?? 0 } },
    drive,
    new Float64Array(2 * bench.fine.width),
  );
  const size = (k: number) => Math.hypot(state.antenna[2 * k] ?? 0, state.antenna[2 * k + 1] ?? 0);
  expect(size(1) / ((standing / vt) * 50 * drive)).toBeCloseTo(1, 3);
  expect(size(2) / size(1) / (1 / 50 / 4)).toBeCloseTo(1, 3);
  expect(size(3) / size(1) / (1 / 50 ** 2 / 24)).toBeCloseTo(1, 3);
});

// Source: y = a + g·a³ has c1 = A + ¾gA³ and c3 = ¼gA³; y = a|a| (square law behind a rectifier)
// has c1 = 8A²/3π, c3 = 8A²/15π, c5 = −8A²/105π (Fourier series of cos|cos|).
describe('two tones through a known curve', () => {
  const db = (ratio: number) => 20 * Math.log10(ratio);
  const sent = (points: number, y: (a: number) => readonly [number, number]) => {
    const drives = envelopeDrives(2, points);
    const out = Array.from(drives, y);
    return envelopeProducts(
      Float64Array.from(out, ([re]) => re),
      Float64Array.from(out, ([, im]) => im),
      Math.hypot(...y(2)),
      7,
    );
  };
  test('nothing flattens: PEP is twice the mean and four times a tone', () => {
    const { tone, mean } = sent(15, (a) => [3 * a, a]);
    expect(tone).toBeCloseTo(db(0.5), 12);
    expect(mean).toBeCloseTo(0.5, 12);
  });
  test('a cubic that turns the phase as well', () => {
    const [gr, gi] = [-0.02, 0.05];
    const { belowTone, belowPep } = sent(15, (a) => [a + gr * a ** 3, gi * a ** 3]);
    const tone = Math.hypot(2 + 6 * gr, 6 * gi);
    const third = 2 * Math.hypot(gr, gi);
    expect(belowTone[0]).toBeCloseTo(db(third / tone), 9);
    const crest = Math.hypot(2 + 8 * gr, 8 * gi);
    expect(belowPep[0]).toBeCloseTo(db(third / 2 / crest), 9);
    expect(belowTone[1] ?? 0).toBeLessThan(-250);
  });
  test('a square law', () => {
    const { belowTone } = sent(15, (a) => [a * a, 0]);
    expect(belowTone[0]).toBeCloseTo(db(1 / 5), 2);
    expect(belowTone[1]).toBeCloseTo(db(1 / 35), 1);
  });
});
