import { describe, expect, test } from 'vitest';
import {
  type Divider,
  dividerCapacitance,
  loopSlope,
  negativeResistance,
  type OscillatorCrystal,
  pulledFrequency,
  reactanceAt,
  resistanceAt,
} from '../../src/engine/circuit/colpitts.ts';
import { type AcRun, bleeders, simulateAc, value } from './simulator.ts';

const crystal = (fs: number, lm: number, q: number, c0: number): OscillatorCrystal => ({
  fs,
  lm,
  rm: (2 * Math.PI * fs * lm) / q,
  c0,
});
const pF = 1e-12;
const uH = 1e-6;
const pulled = (x: OscillatorCrystal, load: number, l = 0): number => {
  const f = pulledFrequency(x, load, l);
  if (f === null) throw new Error('does not oscillate');
  return f;
};

// Source: pulls of a 9 MHz crystal of 14 mH and 3.5 pF, worked beforehand with another model.
describe('pulls of a 9 MHz crystal', () => {
  const x = crystal(9e6, 14e-3, 100_000, 3.5 * pF);
  test.each([
    [110, 886],
    [50, 1879],
    [23.5, 3723],
  ])('a load of %f pF raises it by %f Hz', (load, hertz) => {
    expect(Math.abs(pulled(x, load * pF) - x.fs - hertz)).toBeLessThan(1);
  });
  test.each([
    [30, 3.0],
    [20, 4.3],
    [15, 5.4],
    [10, 7.4],
    [22, 3.9],
    [33, 2.75],
  ])('a load of %f pF raises it by %f kHz', (load, kilohertz) => {
    expect(Math.abs((pulled(x, load * pF) - x.fs) / 1e3 - kilohertz)).toBeLessThan(0.051);
  });
  test.each([
    [1, -325],
    [2.2, -725],
    [4.7, -1594],
    [6.8, -2365],
    [10, -3617],
    [15, -5787],
    [22, -9360],
  ])('%f µH lower it by %f Hz', (l, hertz) => {
    expect(Math.abs(pulled(x, Number.POSITIVE_INFINITY, l * uH) - x.fs - hertz)).toBeLessThan(1);
  });
  test.each([
    [110, 2.8],
    [50, 6.3],
    [23.5, 13.3],
  ])('against %f pF it takes about %f µH to come back to fs', (load, l) => {
    expect(Math.abs(pulled(x, load * pF, l * uH) - x.fs)).toBeLessThan(30);
  });
});

// Source: carrier of the 7.2 MHz filter, worked beforehand with an independent circuit solver.
test('3010 Hz above 7.2 MHz take about 15.5 pF', () => {
  const x = crystal(7.2e6, 30e-3, 70_000, 4 * pF);
  const f = x.fs + 3010;
  const load = 1 / (2 * Math.PI * f * reactanceAt(x, f));
  expect(load / pF).toBeCloseTo(15.5, 1);
});

// Source: common practice, no source: some 39 pF in series raise a 7.16 MHz crystal by about 1 kHz.
test('39 pF raise a usual 7.16 MHz crystal by about 1 kHz', () => {
  const x = crystal(7.16e6, 35e-3, 70_000, 4 * pF);
  expect(pulled(x, 39 * pF) - x.fs).toBeGreaterThan(800);
  expect(pulled(x, 39 * pF) - x.fs).toBeLessThan(1300);
});

// Source: makers' notes on load capacitance: Δf/f = (Cm/2)[1/(C0 + CL1) − 1/(C0 + CL2)], narrow-band.
test.each([
  [3.6864e6, 130e-3, 5.8, 30, 20],
  [7.2e6, 30e-3, 4, 32, 15.5],
  [9e6, 14e-3, 3.5, 30, 12],
  [14.318e6, 7.5e-3, 3, 50, 20],
])('shift between two loads by the makers’ formula: %f Hz', (fs, lm, c0, first, second) => {
  const x = crystal(fs, lm, 100_000, c0 * pF);
  const cm = 1 / ((2 * Math.PI * fs) ** 2 * lm);
  const makers = ((fs * cm) / 2) * (1 / (x.c0 + second * pF) - 1 / (x.c0 + first * pF));
  const exact = pulled(x, second * pF) - pulled(x, first * pF);
  expect(Math.abs(exact / makers - 1)).toBeLessThan(0.002);
});

// Source: makers' notes: resistance at a load is Rm(1 + C0/CL)².
test('resistance at a load', () => {
  const x = crystal(7.2e6, 30e-3, 70_000, 4 * pF);
  const f = pulled(x, 15.5 * pF);
  expect(resistanceAt(x, f) / (x.rm * (1 + 4 / 15.5) ** 2)).toBeCloseTo(1, 4);
});

interface Oscillator {
  readonly x: OscillatorCrystal;
  readonly divider: Divider;
  readonly seriesC: number | null;
  readonly seriesL: number;
}

const divider = (c1: number, c2: number, base: number): Divider => ({
  c1: c1 * pF,
  c2: c2 * pF,
  base: base * pF,
});

const oscillators: readonly Oscillator[] = [
  [1.8432e6, 500e-3, 60_000, 6, 1000, 1000, 10, 47, 0],
  [3.58e6, 120e-3, 80_000, 5, 470, 470, 6, 22, 0],
  [3.6864e6, 130e-3, 90_000, 5.8, 330, 470, 6, 0, 15],
  [4.9152e6, 70e-3, 100_000, 4.5, 220, 220, 5, 33, 0],
  [4.9152e6, 70e-3, 30_000, 4.5, 220, 220, 5, 2, 0],
  [7.16e6, 33e-3, 70_000, 4, 220, 220, 6, 39, 0],
  [7.2e6, 30e-3, 70_000, 4, 247, 220, 6, 17.7, 0],
  [7.2e6, 30e-3, 70_000, 4, 247, 220, 6, 0, 4.2],
  [9e6, 14e-3, 100_000, 3.5, 100, 100, 8, 0, 6.8],
  [10e6, 11e-3, 60_000, 5, 150, 100, 8, 10, 0],
  [14.318e6, 7.5e-3, 80_000, 3, 100, 100, 6, 0, 2.2],
  [21e6, 4e-3, 60_000, 5, 68, 68, 5, 15, 0],
].map(([fs = 0, lm = 0, q = 0, c0 = 0, c1 = 0, c2 = 0, base = 0, c = 0, l = 0]) => ({
  x: crystal(fs, lm, q, c0 * pF),
  divider: divider(c1, c2, base),
  seriesC: c === 0 ? null : c * pF,
  seriesL: l * uH,
}));

/** The loop cut open by a voltage source: crystal, series part, base; the collector is grounded. */
function openLoop(of: Oscillator, gm: number): string {
  const { fs, lm, rm, c0 } = of.x;
  return `v1 0 top dc 0 ac 1
lm top m ${value(lm)}
rm m n ${value(rm)}
cm n p ${value(1 / ((2 * Math.PI * fs) ** 2 * lm))}
c0 top p ${value(c0)}
${of.seriesC === null ? `ls p b ${value(of.seriesL)}` : `cs p b ${value(of.seriesC)}`}
c1 b e ${value(of.divider.c1)}
c2 e 0 ${value(of.divider.c2)}
cb b 0 ${value(of.divider.base)}
g1 0 e b e ${value(gm)}
${bleeders(['p', 'b', 'e'])}`;
}

/** Impedance all the way round at each frequency of a run. */
function impedance(run: AcRun): { r: number[]; x: number[] } {
  const { re, im } = run.current('v1');
  const r: number[] = [];
  const x: number[] = [];
  re.forEach((a, i) => {
    const b = im[i] ?? 0;
    // 1 V against the direction of the current.
    r.push(-a / (a * a + b * b));
    x.push(b / (a * a + b * b));
  });
  return { r, x };
}

/** Frequency at which the reactance rises through zero. */
function zeroOf(run: AcRun): number {
  const { x } = impedance(run);
  const i = x.findIndex((now, k) => now >= 0 && (x[k - 1] ?? 0) < 0);
  const [f0, f1, x0, x1] = [run.frequency[i - 1], run.frequency[i], x[i - 1], x[i]];
  if (f0 === undefined || f1 === undefined || x0 === undefined || x1 === undefined) {
    throw new Error('no zero in the sweep');
  }
  return f0 - (x0 * (f1 - f0)) / (x1 - x0);
}

function frequencyOf({ x, divider, seriesC, seriesL }: Oscillator): number {
  const c = dividerCapacitance(divider);
  return pulled(x, seriesC === null ? c : 1 / (1 / c + 1 / seriesC), seriesL);
}

// Source: circuit simulator, run live.
describe('against the simulator', () => {
  test.each(oscillators.map((of) => [of.x.fs, of] as const))(
    'reactance of the loop at %f Hz is zero within 0.01 Hz',
    async (_, of) => {
      const f = frequencyOf(of);
      const run = await simulateAc(openLoop(of, 0), { from: f - 5, to: f + 5, points: 21 });
      expect(Math.abs(zeroOf(run) - f)).toBeLessThan(0.01);
    },
  );

  test.each(oscillators.map((of) => [of.x.fs, of] as const))(
    'with the gain that just sustains %f Hz it moves by less than 0.2 ppm',
    async (_, of) => {
      const f = frequencyOf(of);
      const gm = await sustainingGain(of, f);
      const run = await simulateAc(openLoop(of, gm), { from: f - 20, to: f + 20, points: 81 });
      // At the far end of a poor crystal's reach R(1 + C0/CL)² is ten times Rm: 3 ppm.
      const ppm = (of.seriesC ?? 1) < 5 * pF ? 3 : 0.2;
      expect(Math.abs(zeroOf(run) / f - 1) * 1e6).toBeLessThan(ppm);
    },
  );

  test.each(oscillators.map((of) => [of.x.fs, of] as const))(
    'negative resistance at the start, %f Hz',
    async (_, of) => {
      const f = frequencyOf(of);
      const gm = 0.02;
      const run = await simulateAc(openLoop(of, gm), { from: f, to: f, points: 1 });
      const negative = negativeResistance(of.divider, f, gm);
      const positive = resistanceAt(of.x, f);
      const theirs = impedance(run).r[0] ?? 0;
      // The two nearly cancel in places, so against their size; the simulator keeps 1e-11 of Lm's reactance.
      const off = Math.abs(negative + positive - theirs);
      expect(off / (positive - negative)).toBeLessThan(1e-6);
    },
  );

  test.each(oscillators.map((of) => [of.x.fs, of] as const))(
    'slope of the reactance at %f Hz within 1 %',
    async (_, of) => {
      const f = frequencyOf(of);
      const run = await simulateAc(openLoop(of, 0), { from: f - 1, to: f + 1, points: 3 });
      const { x } = impedance(run);
      const theirs = ((x[2] ?? 0) - (x[0] ?? 0)) / 2;
      expect(Math.abs(loopSlope(of.x, f, of.seriesL) / theirs - 1)).toBeLessThan(0.01);
    },
  );
});

/** Transconductance with which the loop has no resistance left, by secants on the simulator. */
async function sustainingGain(of: Oscillator, f: number): Promise<number> {
  const resistance = async (gm: number) => {
    const run = await simulateAc(openLoop(of, gm), { from: f, to: f, points: 1 });
    return impedance(run).r[0] ?? 0;
  };
  let [g0, r0] = [0, await resistance(0)];
  let [g1, r1] = [1e-4, await resistance(1e-4)];
  for (let i = 0; i < 6 && Math.abs(r1) > 1e-6; i += 1) {
    const next = g1 - (r1 * (g1 - g0)) / (r1 - r0);
    [g0, r0] = [g1, r1];
    [g1, r1] = [next, await resistance(next)];
  }
  return g1;
}
