import { describe, expect, test } from 'vitest';
import { carrierLeak } from '../../src/engine/circuit/modulator/carrierLeak.ts';
import { type DiodePair, diodeSwitch } from '../../src/engine/circuit/modulator/diodeSwitch.ts';
import { simulateReal, value } from './simulator.ts';

/** Carrier 1 MHz; where there is audio, it is 100 kHz, so that ten periods hold both. */
const CARRIER = 1e6;
const AUDIO = 1e5;
const PERIODS = 10;

// A diode as makers' public model cards have it, without its charges: IS, N, RS of a 1N4148.
const model = '.model dx d(is=2.52e-9 n=1.752 rs=0.568)';
const silicon = { knee: 0.62, emission: 1.75, bulk: 0.57 };

interface Halves {
  readonly one: string;
  readonly two: string;
  readonly ohms: readonly [number, number];
  /** Capacitor from the carrier to one half, F. */
  readonly farads?: number;
}

const diodes = ({ one, two }: Halves) => `${one}\n${two}\n${model}`;

/** The diodes take turns: carrier at the centre of two windings, output on a third. */
const turns = (emf: number, halves: Halves, load: number) => `
vlo lo 0 sin(0 ${value(emf)} ${CARRIER})
rs lo ct 50
la a ct 200u
lb ct b 200u
lo out 0 200u
k1 la lb 0.999999
k2 la lo 0.999999
k3 lb lo 0.999999
r1 p 0 ${value(halves.ohms[0])}
r2 0 q ${value(halves.ohms[1])}
${halves.farads ? `cu lo out ${value(halves.farads)}` : ''}
rl out 0 ${value(load)}
${diodes(halves)}`;

/** They conduct together: carrier on two windings, output and audio at the joint. */
const together = (emf: number, halves: Halves, load: number, audio = 0) => `
vlo lo 0 sin(0 ${value(emf)} ${CARRIER})
rs lo prim 50
lp prim 0 200u
la a 0 200u
lb 0 b 200u
k1 la lb 0.999999
k2 la lp 0.999999
k3 lb lp 0.999999
r1 p w ${value(halves.ohms[0])}
r2 w q ${value(halves.ohms[1])}
rl w 0 ${value(load)}
${audio > 0 ? `va au 0 sin(0 ${value(audio)} ${AUDIO})\nra au w ${value(load)}` : ''}
${halves.farads ? `cu lo w ${value(halves.farads)}` : ''}
${diodes(halves)}`;

/** Peak of a frequency in the last ten periods of the carrier, V. */
async function peak(netlist: string, node: string, frequency: number): Promise<number> {
  const end = 40 / CARRIER;
  const run = await simulateReal(
    netlist,
    `.tran 2n ${value(end)} ${value(end - PERIODS / CARRIER)} 1n`,
    'reltol=1e-5 abstol=1e-10 vntol=1e-8 method=gear',
  );
  const time = run.vector('time');
  const volts = run.vector(`v(${node})`);
  let re = 0;
  let im = 0;
  for (let i = 1; i < time.length; i += 1) {
    const [t0, t1] = [time[i - 1] ?? 0, time[i] ?? 0];
    const [v0, v1] = [volts[i - 1] ?? 0, volts[i] ?? 0];
    const turn = (t: number) => 2 * Math.PI * frequency * t;
    re += ((t1 - t0) * (v0 * Math.cos(turn(t0)) + v1 * Math.cos(turn(t1)))) / 2;
    im += ((t1 - t0) * (v0 * Math.sin(turn(t0)) + v1 * Math.sin(turn(t1)))) / 2;
  }
  return (2 * Math.hypot(re, im) * CARRIER) / PERIODS;
}

const pairOf = (action: DiodePair['action'], emf: number, impedance: number): DiodePair => ({
  action,
  emf,
  source: 50,
  trimmer: 100,
  impedance,
  ...silicon,
});

const forward = { one: 'd1 a p dx', two: 'd2 q b dx' };

/** Half a decibel: the diode's bend taken as a tangent. */
const CLOSE = 0.5;

const decibels = (a: number, b: number) => 20 * Math.log10(a / b);

function switched(pair: DiodePair) {
  const on = diodeSwitch(pair);
  if (!on) throw new Error('does not conduct');
  return on;
}

const leak = (pair: DiodePair, step: number, mismatch: number, capacitance: number) =>
  carrierLeak(pair, switched(pair), { step, mismatch, capacitance }, 2 * Math.PI * CARRIER);

const found = (action: DiodePair['action'], emf: number, halves: Halves) =>
  action === 'turns'
    ? peak(turns(emf, halves, 50), 'out', CARRIER)
    : peak(together(emf, halves, 200), 'w', CARRIER);

// ngspice, transient of the whole circuit with the exponential diode. 1.41 V is the EMF of +7 dBm
// in 50 Ω, 2.5 V that of +12 dBm.
describe.each(['turns', 'together'] as const)('two diodes, %s, against the simulator', (action) => {
  test.each([1.41, 2.5])('carrier left by a trimmer off its null, %f V', async (emf) => {
    const { inPhase } = leak(pairOf(action, emf, 200), 0.02, 0, 0);
    const there = await found(action, emf, { ...forward, ohms: [52, 48] });
    expect(Math.abs(decibels(inPhase, there))).toBeLessThan(CLOSE);
  });

  test.each([1.41, 2.5])('carrier left by 5 pF to one half, %f V', async (emf) => {
    const { quadrature } = leak(pairOf(action, emf, 200), 0, 0, 5e-12);
    const there = await found(action, emf, { ...forward, ohms: [50, 50], farads: 5e-12 });
    expect(Math.abs(decibels(quadrature, there))).toBeLessThan(CLOSE);
  });

  test.each([1, 1.41])(
    'carrier left by diodes 10 mV apart without a trimmer, %f V',
    async (emf) => {
      const { inPhase } = leak({ ...pairOf(action, emf, 200), trimmer: 0 }, 0, 10e-3, 0);
      const one = 'd1 a p1 dx\nvm p1 p 10m';
      const there = await found(action, emf, { one, two: 'd2 q b dx', ohms: [0.01, 0.01] });
      expect(Math.abs(decibels(inPhase, there))).toBeLessThan(CLOSE);
    },
  );
});

test.each([1.41, 2.5])(
  'conversion loss of an on–off switch with real diodes, %f V',
  async (emf) => {
    const { ideal, deadLoss, onLoss } = switched({ ...pairOf('together', emf, 200), trimmer: 0 });
    const halves: Halves = { ...forward, ohms: [0.01, 0.01] };
    const side = await peak(together(emf, halves, 200, 20e-3), 'w', CARRIER + AUDIO);
    expect(Math.abs(ideal + deadLoss + onLoss - decibels(10e-3, side))).toBeLessThan(CLOSE);
  },
);

test('perfect switches: 3.92 dB reversing, 9.94 dB on and off', () => {
  // Closed form: the fundamental of a square wave, half of it in each sideband.
  expect(switched(pairOf('turns', 1e3, 200)).ideal).toBeCloseTo(3.9224, 4);
  expect(switched(pairOf('together', 1e3, 200)).ideal).toBeCloseTo(9.943, 4);
});

test('a carrier below the knee switches nothing', () => {
  expect(diodeSwitch(pairOf('turns', 0.6, 200))).toBeNull();
});

test('a trimmer takes the diodes’ difference out as far as it reaches', () => {
  const pair = pairOf('turns', 1.41, 200);
  const { reach, fromDiodes, fromStep } = leak(pair, 0.01, 20e-3, 0);
  expect(reach).toBeGreaterThan(fromDiodes);
  expect(fromDiodes).toBeGreaterThan(fromStep);
  expect(leak(pair, 0.01, 20e-3, 0).balance).toBeCloseTo(leak(pair, 0.01, 0, 0).balance, 9);
});

test('a carrier just above the knee makes figures, and the more loss the less it is', () => {
  const lossAt = (emf: number) => {
    const { knee, deadLoss, onLoss } = switched({ ...pairOf('turns', emf, 233), trimmer: 50 });
    expect(knee).toBeLessThanOrEqual(silicon.knee);
    return deadLoss + onLoss;
  };
  expect(lossAt(0.6325)).toBeGreaterThan(lossAt(0.8));
  expect(lossAt(0.8)).toBeGreaterThan(lossAt(1.4));
});
