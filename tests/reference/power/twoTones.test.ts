import { expect, test } from 'vitest';
import { capacitor } from '../../../src/engine/circuit/outputLadder.ts';
import { driveSweep } from '../../../src/engine/circuit/power/driveSweep.ts';
import {
  envelopeDrives,
  envelopeProducts,
} from '../../../src/engine/circuit/power/envelopeProducts.ts';
import { balanceBench } from '../../../src/engine/circuit/power/harmonicBalance.ts';
import { transistorModels } from '../../../src/engine/data/transistorModels.ts';
import { finish } from '../../../src/engine/errands/drive.ts';
import { simulateReal, value } from '../simulator.ts';
import { circuitOf } from './solvedStage.ts';
import { type BuiltStage, fourier, netlist } from './transientStage.ts';

const none = Number.POSITIVE_INFINITY;

/** Every time constant short against the beat, so that bias and feed follow the envelope. */
const built: BuiltStage = {
  card: transistorModels.d139,
  frequency: 7e6,
  supply: 12,
  feed: { l: 1.5e-6, r: 0.2 },
  emitter: { r: 1, l: 3e-9 },
  bias: { voltage: 0.78, resistance: 22 },
  shunt: 33,
  driver: { r: 12, l: 10e-9, c: 5e-9 },
  ladder: {
    branches: [capacitor('series', 5e-9, none)],
    ratio: 1,
    sourceResistance: none,
    sourceCapacitance: 0,
    load: 30,
    reference: 7e6,
  },
  temperature: 27,
};

// Source: a transient run of the simulator with two tones 70 kHz apart, one whole beat after one
// of settling. The slow envelope leaves out what bias and feed store: that costs some tenths of a dB.
test.for([2, 3.5])('two tones of %d V at their crest', async (crest) => {
  const spacing = 70e3;
  const [lower, upper] = [built.frequency - spacing / 2, built.frequency + spacing / 2];
  const beat = 2 / spacing;
  const tone = (name: string, from: string, to: string, f: number) =>
    `v${name} ${from} ${to} dc 0 sin(0 ${value(crest / 2)} ${value(f)})`;
  const run = await simulateReal(
    netlist(built, `${tone('1', 'd', 'm', lower)}\n${tone('2', 'm', '0', upper)}`),
    `.tran 1n ${value(1.2 * beat)} ${value(0.19 * beat)} ${value(1 / built.frequency / 120)}`,
    'reltol=1e-5 abstol=1e-11 vntol=1e-8 method=trap',
  );
  const highest = Math.round((built.frequency + 4 * spacing) * beat);
  const spectrum = fourier(
    run.vector('time'),
    run.vector('v(out)'),
    0.2 * beat,
    beat,
    highest,
    Math.round((built.frequency - 4 * spacing) * beat),
  );
  const at = (f: number) => {
    const k = Math.round(f * beat);
    return Math.hypot(spectrum[2 * k] ?? 0, spectrum[2 * k + 1] ?? 0);
  };
  const theirs = (order: number) => {
    const off = (order / 2) * spacing;
    // Storage makes the two sides differ a little; the envelope knows their mean.
    const sides = (at(built.frequency - off) + at(built.frequency + off)) / 2;
    const tones = (at(lower) + at(upper)) / 2;
    return 20 * Math.log10(sides / tones);
  };

  const bench = balanceBench();
  const drives = envelopeDrives(crest, 15);
  const { re, im, found } = finish(
    driveSweep(bench, circuitOf(built, bench.fine.harmonics), drives),
  );
  expect([...found]).not.toContain(0);

  const { belowTone } = envelopeProducts(re, im, 1, 7);
  expect(Math.abs((belowTone[0] ?? 0) - theirs(3))).toBeLessThan(1);
  expect(Math.abs((belowTone[1] ?? 0) - theirs(5))).toBeLessThan(1);
  expect(Math.abs((belowTone[2] ?? 0) - theirs(7))).toBeLessThan(1);
});
