import { describe, expect, test } from 'vitest';
import { cosinePulse } from '../../src/engine/circuit/conduction.ts';
import type { OutputSeen } from '../../src/engine/stages/output/seen.ts';
import { workOutput } from '../../src/engine/stages/output/work.ts';
import { simulateAc, value } from './simulator.ts';

/** Two watts from 12 V at 7.2 MHz in class B, and a seven-element filter. */
const base: OutputSeen = {
  nominal: 7.2e6,
  pep: 2,
  antenna: 50,
  rules: 'itu',
  ownLimit: 50,
  ownRows: null,
  collectorLoad: 27,
  fundamental: 0.407,
  harmonicCurrents: [...Array(11).keys()].map(
    (n) => (0.407 * cosinePulse(3.4, n)) / cosinePulse(3.4, 1),
  ),
  outputImpedance: 90,
  match: 'transformer',
  loadedQ: 3,
  lowpass: 'chebyshev',
  order: 7,
  cutoffRatio: 1.2,
  ripple: 0.044,
  coilQ: 150,
  capacitorQ: 1000,
  selfCapacitance: 2e-12,
  fitted: 'e24',
  marginWanted: 3,
};

/** The stage's own table of parts as a netlist at one frequency, the final as a current source. */
function netlist(seen: OutputSeen, frequency: number): string {
  const { elements, transformerRatio } = workOutput(seen).results;
  const w = 2 * Math.PI * frequency;
  const n = transformerRatio ?? 1;
  const lines = [
    'i1 0 c dc 0 ac 1',
    `ro c 0 ${value(seen.outputImpedance ?? 1e15)}`,
    `et s 0 c 0 ${value(n)}`,
    'vt s n0 0',
    `ft c 0 vt ${value(n)}`,
  ];
  let node = 0;
  for (const { part, fittedC, l } of elements ?? []) {
    if (part === 'capacitor' && fittedC !== null) {
      lines.push(
        `c${lines.length} n${node} 0 ${value(fittedC)}`,
        `r${lines.length} n${node} 0 ${value(seen.capacitorQ / (w * fittedC))}`,
      );
    } else if (l !== null) {
      const r =
        ((2 * Math.PI * seen.nominal * l) / seen.coilQ) * Math.sqrt(frequency / seen.nominal);
      lines.push(
        `l${lines.length} n${node} m${node} ${value(l)}`,
        `r${lines.length} m${node} n${node + 1} ${value(r)}`,
        `c${lines.length} n${node} n${node + 1} ${value(seen.selfCapacitance)}`,
      );
      node += 1;
    }
  }
  lines.push(`rl n${node} 0 ${value(seen.antenna)}`, `eout out 0 n${node} 0 1`);
  return lines.join('\n');
}

describe('against the circuit simulator', () => {
  test.each<[string, Partial<OutputSeen>]>([
    ['transformer and Chebyshev', {}],
    ['two half-wave sections straight on', { match: 'none', lowpass: 'doubleHalfWave' }],
    ['pi and one half-wave section', { match: 'pi', lowpass: 'halfWave', fitted: 'e12' }],
    ['Butterworth of nine', { lowpass: 'butterworth', order: 9, fitted: 'exact' }],
    ['a final of high resistance on 20 m', { nominal: 14.3e6, outputImpedance: 800 }],
    ['pi alone, down to a low collector load', { match: 'pi', lowpass: 'none', collectorLoad: 8 }],
  ])('%s: harmonics from the table of parts', async (_, change) => {
    const seen = { ...base, ...change };
    const { harmonics } = workOutput(seen).results;
    const at = async (order: number) => {
      const f = order * seen.nominal;
      const run = await simulateAc(netlist(seen, f), { from: f, to: f, points: 1 });
      return run.level('out')[0] ?? 0;
    };
    const fundamental = await at(1);
    for (const { order, level, transimpedance } of harmonics ?? []) {
      if (order === null || level === null || transimpedance === null) continue;
      const theirs =
        (await at(order)) -
        fundamental +
        20 * Math.log10(Math.abs((seen.harmonicCurrents[order] ?? 0) / seen.fundamental));
      // Below −100 dB nothing is promised.
      if (theirs > -100) expect(Math.abs(level - theirs), `harmonic ${order}`).toBeLessThan(1e-6);
    }
  });

  test('power and part voltages at the antenna', async () => {
    const { elements, pepAntenna, drive, inputResistance, inputReactance } =
      workOutput(base).results;
    // The stage drives the network alone with so much of the planned current.
    const current = (drive ?? 0) * base.fundamental;
    const f = base.nominal;
    const text = netlist(base, f).replace(/^ro .*$/m, 'ro c 0 1e15');
    const run = await simulateAc(text, { from: f, to: f, points: 1 });
    const size = (node: string) => {
      const { re, im } = run.node(node);
      return Math.hypot(re[0] ?? 0, im[0] ?? 0) * current;
    };
    expect(size('out') ** 2 / 2 / base.antenna / (pepAntenna ?? 0)).toBeCloseTo(1, 7);
    const shunts = (elements ?? []).filter(({ part }) => part === 'capacitor');
    shunts.forEach(({ volts }, k) => {
      expect(size(`n${k}`) / (volts ?? 0)).toBeCloseTo(1, 7);
    });
    const input = run.node('c');
    expect(inputResistance).toBeCloseTo(input.re[0] ?? 0, 6);
    expect(inputReactance).toBeCloseTo(input.im[0] ?? 0, 6);
  });
});

describe('practice', () => {
  // Common practice, no source: two 1 µH coils and ceramic capacitors make the 40 m network.
  test('two half-wave sections for 40 m', () => {
    const { coils, elements } = workOutput({ ...base, lowpass: 'doubleHalfWave' }).results;
    expect(coils).toHaveLength(2);
    for (const { l } of coils ?? []) {
      expect(l).toBeGreaterThan(0.9e-6);
      expect(l).toBeLessThan(1.2e-6);
    }
    expect((elements ?? []).flatMap(({ fittedC }) => fittedC ?? [])).toEqual([
      430e-12, 910e-12, 430e-12,
    ]);
  });

  // Common practice, no source: one medium-power transistor gives about 2 W from 12 V.
  test('about two watts', () => {
    const { pepAntenna, verdict } = workOutput(base).results;
    expect(pepAntenna).toBeGreaterThan(1.7);
    expect(pepAntenna).toBeLessThan(2.3);
    expect(verdict).toBe('holds');
  });

  // Source: an output filter's heat is its loss: what goes in comes out or warms the parts.
  test('heat of the parts is what the loss says', () => {
    for (const lowpass of ['chebyshev', 'doubleHalfWave', 'butterworth'] as const) {
      const { elements, loss, pepAntenna } = workOutput({
        ...base,
        lowpass,
        selfCapacitance: 0,
      }).results;
      const heat = (elements ?? []).reduce((sum, part) => sum + (part.heat ?? 0), 0);
      const lost = (pepAntenna ?? 0) * (10 ** ((loss ?? 0) / 10) - 1);
      expect(heat / lost).toBeCloseTo(1, 9);
    }
  });
});

describe('refusals', () => {
  // Source: n = √(R_ant/R_c), R_c = (Vcc − Vsat)²/2P: 5 W from 6 V, 1 V lost: 2.5 Ω, 1:4.47.
  test('5 W from 6 V straight into 50 Ω names the ratio that would do', () => {
    const collectorLoad = 25 / 10;
    const { problems, results } = workOutput({
      ...base,
      pep: 5,
      collectorLoad,
      fundamental: 5 / collectorLoad,
      match: 'none',
    });
    const said = problems.find(({ field }) => field === 'output.match');
    expect(said?.weight).toBe('stops');
    expect(said?.try).toContain('1:4.47');
    expect(said?.try).toContain('4.4');
    // The most that 5 V of swing can make in about 50 Ω is a quarter of a watt.
    expect(results.pepAntenna).toBeLessThan(0.3);
  });

  // Source: the L network's Q, √(50/8 − 1) = 2.29.
  test('a pi match below its least Q', () => {
    const { problems, results } = workOutput({
      ...base,
      match: 'pi',
      collectorLoad: 8,
      loadedQ: 2,
    });
    expect(results.pepAntenna).toBeNull();
    expect(problems).toHaveLength(1);
    expect(problems[0]?.field).toBe('output.loadedQ');
    expect(problems[0]?.says).toContain('2.29');
  });

  test('a Chebyshev filter of even order', () => {
    const { problems, results } = workOutput({ ...base, order: 6 });
    expect(results.elements).toBeNull();
    expect(problems[0]?.field).toBe('output.order');
  });
});
