import { expect, test } from 'vitest';
import { currentGain } from '../../src/engine/circuit/currentGain.ts';
import { feedbackAmplifier, THERMAL_VOLTAGE } from './feedbackAmplifier.ts';
import { simulateAc, value } from './simulator.ts';

const cases = [
  {
    current: 8e-3,
    emitter: 22,
    feedback: 1500,
    load: 200,
    source: 200,
    beta: 40,
    hfe: 150,
    base: 15,
  },
  {
    current: 8e-3,
    emitter: 22,
    feedback: 1200,
    load: 170,
    source: 50,
    beta: 67,
    hfe: 290,
    base: 80,
  },
  {
    current: 30e-3,
    emitter: 10,
    feedback: 1000,
    load: 390,
    source: 47,
    beta: 40,
    hfe: 150,
    base: 15,
  },
  {
    current: 20e-3,
    emitter: 0,
    feedback: 3300,
    load: 500,
    source: 75,
    beta: 25,
    hfe: 100,
    base: 5,
  },
];

/** The same transistor as elements: base resistance, rπ, a current-controlled current source. */
function netlist(s: (typeof cases)[number], drive: string, noise = ''): string {
  const rpi = (s.beta + 1) * (THERMAL_VOLTAGE / s.current);
  const emitter = s.emitter > 0 ? `re e 0 ${value(s.emitter)}` : 'ree e 0 1e-9';
  return `${drive}
rbb b bi ${value(s.base)}
rpi bi x ${value(rpi)}
vsense x e 0
f1 c e vsense ${value(s.beta)}
${emitter}
rf b c ${value(s.feedback)}
${noise}`;
}

const one = { from: 1e6, to: 1e6, points: 1 };

// Source: the circuit simulator on the same linear circuit, run live.
test.each(cases)('gain and resistances are the simulator’s: %o', async (s) => {
  const ours = feedbackAmplifier(s);
  const load = `rl c 0 ${value(s.load)}`;
  const driven = await simulateAc(netlist(s, `v1 b 0 dc 0 ac 1\n${load}`), one);
  const gain = driven.node('c').re[0] ?? 0;
  const input = -1 / (driven.current('v1').re[0] ?? 0);
  expect(ours.voltageGain / gain).toBeCloseTo(1, 8);
  expect(ours.input / input).toBeCloseTo(1, 8);
  const back = await simulateAc(netlist(s, `v1 c 0 dc 0 ac 1\nrs b 0 ${value(s.source)}`), one);
  expect(ours.output * -(back.current('v1').re[0] ?? 0)).toBeCloseTo(1, 8);
  // Power gain and the swing at which the collector current stops, from the same run.
  expect((gain ** 2 / s.load) * input).toBeCloseTo(ours.powerGain, 5);
  const collectorCurrent = Math.abs(driven.current('vsense').re[0] ?? 0) * s.beta;
  expect(ours.currentLimitedSwing / ((s.current * Math.abs(gain)) / collectorCurrent)).toBeCloseTo(
    1,
    8,
  );
});

// Source: the definition of the noise factor. Each noise source is put into the simulated circuit
// in turn as a current of its own density, and what reaches the collector is added up.
test.each(cases)('noise factor is the sum over the simulator’s transfers: %o', async (s) => {
  const k4t = 4 * 1.380649e-23 * 290;
  const q2 = 2 * 1.602176634e-19;
  const base = s.current / (s.hfe + 1);
  const passive = `rs b 0 ${value(s.source)}\nrl c 0 ${value(s.load)}`;
  const emitterNode = s.emitter > 0 ? 'e 0' : null;
  const sources: [string, number][] = [
    ['b bi', k4t / s.base],
    ['b c', k4t / s.feedback],
    ['bi e', q2 * base],
    ['c e', q2 * (s.current - base)],
    ...(emitterNode ? ([[emitterNode, k4t / s.emitter]] as [string, number][]) : []),
  ];
  const reach = async (nodes: string) => {
    const run = await simulateAc(netlist(s, passive, `inoise ${nodes} dc 0 ac 1`), one);
    return (run.node('c').re[0] ?? 0) ** 2;
  };
  const own = (await reach('b 0')) * (k4t / s.source);
  let added = 0;
  for (const [nodes, density] of sources) added += (await reach(nodes)) * density;
  expect(1 + added / own).toBeCloseTo(feedbackAmplifier(s).noiseFactor, 6);
});

// Source: closed form. Far above hFE's corner the current gain is fT/f; at fT it is nearly one.
test('current gain against frequency', () => {
  expect(currentGain(100, 300e6, 0)).toBe(100);
  expect(currentGain(100, 300e6, 30e6)).toBeCloseTo(10 / Math.hypot(1, 0.1), 6);
  expect(currentGain(100, 300e6, 3e6)).toBeCloseTo(100 / Math.SQRT2, 10);
});

// Common practice, no source: the usual two-resistor amplifier of 8 mA has 14 to 17 dB and a
// natural impedance near 170 to 200 Ω.
test('the usual two-way amplifier', () => {
  const s = { current: 8e-3, emitter: 22, feedback: 1500, load: 200, source: 200 };
  const ours = feedbackAmplifier({
    ...s,
    beta: currentGain(150, 300e6, 7.2e6),
    hfe: 150,
    base: 15,
  });
  const gain = 10 * Math.log10(ours.powerGain);
  expect(gain).toBeGreaterThan(14);
  expect(gain).toBeLessThan(17);
  for (const ohms of [ours.input, ours.output]) {
    expect(ohms).toBeGreaterThan(150);
    expect(ohms).toBeLessThan(260);
  }
});
