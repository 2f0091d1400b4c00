import { describe, expect, test } from 'vitest';
import type { Rig } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { valueAt } from '../../src/engine/rig/worked.ts';

const [example] = examples as [Rig];

/** The first example with other entries: a value of Transmit by its key, and what is said of the rig. */
function worked(entries: Readonly<Record<string, string>>) {
  const texts = Object.fromEntries(Object.entries(entries).map(([path, text]) => [path, { text }]));
  const all = createEvaluator(stages)({ ...example, entries: { ...example.entries, ...texts } });
  const at = (path: string) => valueAt(all, path);
  return {
    of: (key: string) => at(`transmit.${key}`) as number,
    at,
    problems: Object.values(all.stages).flatMap(({ problems }) => problems),
  };
}

const lossless = { 'transmit.network': '0 dB', 'transmit.saturation': '2 V' };
const classB = { 'transmit.biasBy': 'angle', 'transmit.angle': '180°' };
const pair = { 'transmit.finalForm': 'pushPull', 'transmit.finalDevices': '1' };

// Source: RL = 2(Vcc − Vmin)²/P from collector to collector, worked by hand; the last row in whole ohms.
test.each([
  ['12 V', '2 V', { 5: 40, 10: 20, 20: 10 }, 0.051],
  ['13.8 V', '2 V', { 5: 55.7, 10: 27.8, 20: 13.9 }, 0.051],
  ['24 V', '3 V', { 5: 176, 10: 88, 20: 44 }, 0.5],
] as const)(
  'push-pull from %s: load from collector to collector',
  (supply, lost, table, rounding) => {
    for (const [watts, printed] of Object.entries(table)) {
      const { of } = worked({
        ...lossless,
        ...pair,
        'plan.supply': supply,
        'transmit.saturation': lost,
        'plan.pep': `${watts} W`,
      });
      expect(Math.abs(of('collectorLoad') - printed)).toBeLessThanOrEqual(rounding);
    }
  },
);

// Source: P = V²/(2R). "With a bare 50-ohm load 13.8 V gives only 1.4 W"; π/4·(Vcc − Vsat)/Vcc is
// 0.67 there: two figures of the bench, by hand.
test('straight into 50 Ω, and the most that class B gives', () => {
  const { of } = worked({ ...lossless, ...classB, 'plan.supply': '13.8 V', 'plan.pep': '5 W' });
  expect(Math.abs(of('straightOn') - 1.4)).toBeLessThanOrEqual(0.05);
  expect(Math.abs(of('mostOverall') - 0.67)).toBeLessThanOrEqual(0.005);
  // At full swing in class B nothing is left to gain.
  expect(of('overall')).toBeCloseTo(of('mostOverall'), 12);
});

describe('several transistors', () => {
  const four = { ...lossless, ...classB, 'plan.pep': '4 W' };
  const one = worked({ ...four, 'transmit.finalForm': 'single' }).of;
  const twin = { 'transmit.finalForm': 'parallel', 'transmit.finalDevices': '2' };
  const two = worked({ ...four, ...twin }).of;
  const push = worked({ ...four, ...pair, 'transmit.evenBalance': '20 dB' }).of;

  // Source: Kirchhoff's current law; the load is the circuit's, whoever feeds it.
  test('side by side share current and heat; load and efficiency stay', () => {
    for (const key of ['collectorLoad', 'dcCurrent', 'efficiency', 'dissipation']) {
      expect(two(key)).toBeCloseTo(one(key), 12);
    }
    expect(two('peakEach')).toBeCloseTo(one('peakCurrent') / 2, 12);
    expect(two('dissipationEach')).toBeCloseTo(one('dissipation') / 2, 12);
    expect(two('outputImpedance')).toBeCloseTo(one('outputImpedance') / 2, 9);
  });

  // Source: class B closed forms. Half of the winding carries the current of one side, so its peak is
  // twice that of the load from collector to collector; the mean of both halves is 2/π of the peak.
  test('push-pull: the same efficiency at four times the load, half the peak current', () => {
    expect(push('collectorLoad')).toBeCloseTo(4 * one('collectorLoad'), 12);
    expect(push('efficiency')).toBeCloseTo(one('efficiency'), 12);
    expect(push('dcCurrent')).toBeCloseTo(
      (2 / Math.PI) * 2 * Math.sqrt((2 * 4) / push('collectorLoad')),
      12,
    );
    expect(push('peakEach')).toBeCloseTo(one('peakCurrent') / 2, 12);
    expect(push('dissipationEach')).toBeCloseTo(one('dissipation') / 2, 12);
  });

  // Source: 20 dB is a tenth; the second harmonic of a half cosine is 2/(3π) of its peak, against
  // 1/2 for the fundamental; its odd ones vanish.
  test('push-pull leaves a tenth of the even harmonics at 20 dB', () => {
    const currents = push('harmonicCurrents') as unknown as readonly number[];
    const fundamental = currents[1] ?? 0;
    expect((currents[2] ?? 0) / fundamental).toBeCloseTo(0.1 * (4 / (3 * Math.PI)), 12);
    expect(Math.abs((currents[3] ?? 1) / fundamental)).toBeLessThan(1e-12);
  });
});

// Source: Ohm's law stepped until it settles: the current follows the swing, the swing the voltage left.
test.each([0.1, 1, 3])('a supply of %d Ω sags to where Ohm’s law leaves it', (resistance) => {
  const { of } = worked({ 'transmit.supplyResistance': `${resistance} Ω` });
  const [supply, saturation, pep] = [12, 1, 2];
  let volts: number = supply;
  for (let i = 0; i < 400; i += 1) {
    const swing = (volts - saturation) / (supply - saturation);
    volts = 0.5 * volts + 0.5 * (supply - resistance * of('dcCurrent') * swing);
  }
  expect(of('sagVoltage')).toBeCloseTo(volts, 9);
  expect(of('sagPower')).toBeCloseTo(pep * ((volts - saturation) / (supply - saturation)) ** 2, 9);
});

// Source: nodal analysis of the L network by hand: the coil in series with the lower resistance, the
// capacitor across the higher one; seen from the collector it is the load wanted, without reactance.
test.each([
  ['0.5 W', false],
  ['2 W', true],
  ['5 W', true],
] as const)('the L-match for %s shows the collector its load', (pep, up) => {
  const { of, at } = worked({ 'plan.pep': pep });
  const w = 2 * Math.PI * Number(at('plan.nominal'));
  const x = w * of('matchCoil');
  const b = w * of('matchCapacitor');
  // Towards the antenna: either the capacitor across it, then the coil; or the other way round.
  let [re, im] = [50, 0];
  const across = () => {
    const size = re * re + im * im;
    const [g, s] = [re / size, -im / size + b];
    const all = g * g + s * s;
    [re, im] = [g / all, -s / all];
  };
  if (up) across();
  im += x;
  if (!up) across();
  expect(re).toBeCloseTo(of('collectorLoad'), 9);
  expect(im).toBeCloseTo(0, 9);
  expect(of('collectorLoad') < 50).toBe(up);
});

// Source: the mean and the first Fourier term of what is drawn, by the trapezoidal rule.
test.each(['20 mA', '200 mA', '600 mA'])(
  'the cycle drawn at %s has its own currents',
  (standing) => {
    const { of } = worked({ 'transmit.standing': standing });
    const cycle = of('cycle') as unknown as Record<'phase' | 'voltage' | 'current', Float64Array>;
    const steps = cycle.phase.length - 1;
    let [mean, first] = [0, 0];
    for (let i = 0; i < steps; i += 1) {
      mean += (cycle.current[i] ?? 0) / steps;
      first -= (2 * (cycle.current[i] ?? 0) * Math.cos(cycle.phase[i] ?? 0)) / steps;
    }
    expect(Math.abs(mean / of('dcCurrent') - 1)).toBeLessThan(2e-3);
    expect(Math.abs(first / of('fundamental') - 1)).toBeLessThan(2e-3);
    expect(Math.min(...cycle.voltage)).toBeCloseTo(1, 12);
    expect(Math.max(...cycle.voltage)).toBeCloseTo(23, 12);
  },
);

// Source: θ = (Tj − Ta)/Pd: along the curve each watt adds its kelvins, and where it meets what is
// allowed stands the heat sink asked for.
test('junction over heat sink', () => {
  const { of, at } = worked({ 'plan.pep': '4 W', 'transmit.finalDevice': 'd139' });
  const curve = of('overSink') as unknown as Record<'sink' | 'speech' | 'tone', Float64Array>;
  const first = curve.sink[0] ?? 0;
  const last = curve.sink.at(-1) ?? 0;
  const slope = ((curve.tone.at(-1) ?? 0) - (curve.tone[0] ?? 0)) / (last - first);
  expect(slope).toBeCloseTo(of('dissipationTone'), 9);
  const meets = first + (Number(at('transmit.junctionAllowed')) - (curve.tone[0] ?? 0)) / slope;
  expect(meets).toBeCloseTo(of('sinkTone'), 9);
});

// Source: P = V²/(2R) by hand: 5 W from 6 V less 1 V want 2.5 Ω, straight on 50 Ω gives 0.25 W; the
// ratio is the root of 20, 4.47, nine to two.
test('five watts from six volts into 50 Ω: refused, and what would do it', () => {
  const { of, at, problems } = worked({
    'plan.supply': '6 V',
    'plan.pep': '5 W',
    'transmit.network': '0 dB',
    'output.match': 'none',
  });
  expect(of('collectorLoad')).toBeCloseTo(2.5, 12);
  expect(of('straightOn')).toBeCloseTo(0.25, 12);
  expect(of('ratioNeeded')).toBeCloseTo(Math.sqrt(20), 12);
  expect(at('transmit.ratioWords')).toContain('2 to 9 turns');
  expect(of('matchQ')).toBeCloseTo(Math.sqrt(19), 12);
  const refused = problems.find(({ field }) => field === 'output.match');
  expect(refused?.weight).toBe('stops');
  expect(refused?.try).toContain('2:9');
});

test('one alone cannot be several side by side', () => {
  const { problems } = worked({ 'transmit.finalForm': 'parallel' });
  expect(problems.some(({ field }) => field === 'transmit.finalDevices')).toBe(true);
});
