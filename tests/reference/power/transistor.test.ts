import { describe, expect, test } from 'vitest';
import { gummelPoon, junctionWaves } from '../../../src/engine/circuit/power/gummelPoon.ts';
import {
  type GummelPoonCard,
  gummelPoonAt,
} from '../../../src/engine/circuit/power/gummelPoonAt.ts';
import { transistors } from '../../../src/engine/data/devices.ts';
import { transistorModels } from '../../../src/engine/data/transistorModels.ts';
import { simulateAc, simulateReal, value } from '../simulator.ts';
import { modelCard } from './transientStage.ts';

// A card that uses every parameter, invented for the test.
const full: GummelPoonCard = {
  ...transistorModels.d139,
  nf: 1.02,
  nr: 1.01,
  ikr: 0.3,
  isc: 1e-11,
  nc: 1.6,
  eg: 1.14,
};
const resistances = { rb: 0, rc: 0, re: 0 };

/** The inner transistor's currents into base and collector at two junction voltages. */
function currents(card: GummelPoonCard, celsius: number, vbe: number, vbc: number) {
  const waves = junctionWaves(1);
  waves.vbe[0] = vbe;
  waves.vbc[0] = vbc;
  gummelPoon(gummelPoonAt(card, celsius + 273.15), waves);
  return {
    base: (waves.ibe[0] ?? 0) + (waves.ibc[0] ?? 0),
    collector: -(waves.ibc[0] ?? 0),
    waves,
  };
}

// Source: the circuit simulator's operating point with the same card. Its constants are older than
// the SI of 2019: 4e-7 in kT/q, thirty times as much in an exponential.
describe('currents against the simulator', () => {
  test.for(
    [-10, 27, 85].flatMap((celsius) =>
      [
        [0.55, 5],
        [0.7, 12],
        [0.85, 1],
        [0.9, 0.1],
        [0.1, -0.6],
      ].map(([vbe, vce]) => [celsius, vbe, vce] as [number, number, number]),
    ),
  )('%d °C, vbe %d V, vce %d V', async ([celsius, vbe, vce]) => {
    for (const card of [full, transistorModels.n2222]) {
      const bare = { ...card, ...resistances };
      const run = await simulateReal(
        `vb b 0 ${value(vbe)}\nvc c 0 ${value(vce)}\nq1 c b 0 t\n.model t npn(${modelCard(bare)})`,
        '.op',
        `reltol=1e-9 abstol=1e-16 vntol=1e-12 temp=${celsius}`,
      );
      const ours = currents(bare, celsius, vbe, vbe - vce);
      expect(-(run.vector('i(vc)')[0] ?? 0) / ours.collector).toBeCloseTo(1, 4);
      expect(-(run.vector('i(vb)')[0] ?? 0) / ours.base).toBeCloseTo(1, 4);
    }
  });
});

// Source: the circuit simulator's admittances at the base terminal, which show the charges.
test.for([
  [27, 0.3, 5],
  [27, 0.75, 12],
  [85, 0.8, 0.5],
  [-10, 0.85, 0.1],
] as const)('capacitances against the simulator: %d °C, vbe %d V, vce %d V', async (point) => {
  const [celsius, vbe, vce] = point;
  const bare = { ...full, ...resistances };
  const w = 2 * Math.PI * 1e6;
  const { waves } = currents(bare, celsius, vbe, vbe - vce);
  const net = (at: 'b' | 'c') =>
    `vb b 0 dc ${value(vbe)} ac ${at === 'b' ? 1 : 0}
vc c 0 dc ${value(vce)} ac ${at === 'c' ? 1 : 0}
q1 c b 0 t
.model t npn(${modelCard(bare)})
.options temp=${celsius} reltol=1e-9 abstol=1e-16 vntol=1e-12`;
  const sweep = { from: 1e6, to: 1e6, points: 1 };
  const base = await simulateAc(net('b'), sweep);
  const collector = await simulateAc(net('c'), sweep);
  const [cee, cec, ccc] = [waves.cee[0] ?? 0, waves.cec[0] ?? 0, waves.ccc[0] ?? 0];
  const seen = (run: typeof base, name: string) => -(run.current(name).im[0] ?? 0) / w;
  // Base driven: vbe and vbc rise alike. Collector driven: vbc falls alone.
  expect(seen(base, 'vb') / (cee + cec + ccc)).toBeCloseTo(1, 4);
  expect(seen(base, 'vc') / -ccc).toBeCloseTo(1, 4);
  expect(seen(collector, 'vc') / ccc).toBeCloseTo(1, 4);
  expect(seen(collector, 'vb') / -(cec + ccc)).toBeCloseTo(1, 4);
});

test('derivatives against differences', () => {
  const model = gummelPoonAt(full, 330);
  const at = (vbe: number, vbc: number) => {
    const waves = junctionWaves(1);
    waves.vbe[0] = vbe;
    waves.vbc[0] = vbc;
    gummelPoon(model, waves);
    return waves;
  };
  const h = 1e-6;
  for (const vbe of [-3, 0.2, 0.5, 0.7, 0.9]) {
    for (const vbc of [-15, -1, 0.2, 0.45, 0.75]) {
      const here = at(vbe, vbc);
      const [e0, e1] = [at(vbe - h, vbc), at(vbe + h, vbc)];
      const [c0, c1] = [at(vbe, vbc - h), at(vbe, vbc + h)];
      for (const [slope, of, lower, upper] of [
        ['gee', 'ibe', e0, e1],
        ['gec', 'ibe', c0, c1],
        ['gce', 'ibc', e0, e1],
        ['gcc', 'ibc', c0, c1],
        ['cee', 'qbe', e0, e1],
        ['cec', 'qbe', c0, c1],
        ['ccc', 'qbc', c0, c1],
      ] as const) {
        const difference = ((upper[of][0] ?? 0) - (lower[of][0] ?? 0)) / (2 * h);
        const scale = Math.abs(difference) + (of.startsWith('q') ? 1e-12 : 1e-9);
        expect(Math.abs((here[slope][0] ?? 0) - difference) / scale).toBeLessThan(1e-4);
      }
    }
  }
});

// Source: makers' public data sheets, as src/engine/data/devices.ts has them; VCEsat, VBE from memory.
describe('cards against data sheet figures', () => {
  /** Collector current, V from collector to emitter; the figures that go with it. */
  const at = (card: GummelPoonCard, amps: number, volts: number) => {
    let [low, high] = [0.2, 1.2];
    for (let i = 0; i < 60; i += 1) {
      const middle = (low + high) / 2;
      if (currents(card, 25, middle, middle - volts).collector < amps) low = middle;
      else high = middle;
    }
    const { base, collector, waves } = currents(card, 25, low, low - volts);
    const gm = -(waves.gce[0] ?? 0);
    const c = (waves.cee[0] ?? 0) + (waves.cec[0] ?? 0) + (waves.ccc[0] ?? 0);
    return { vbe: low, hfe: collector / base, ft: gm / (2 * Math.PI * c) };
  };
  const cob = (card: GummelPoonCard, volts: number) =>
    card.cjc / (1 + volts / card.vjc) ** card.mjc;
  test.for(['d139', 'n2222', 'n3866'] as const)('%s', (key) => {
    const [card, sheet] = [transistorModels[key], transistors[key]];
    const amps = { d139: 0.15, n2222: 0.15, n3866: 0.05 }[key];
    expect(at(card, amps, 5).hfe / sheet.hfe[1]).toBeGreaterThan(0.7);
    expect(at(card, amps, 5).hfe / sheet.hfe[1]).toBeLessThan(1.5);
    expect(at(card, 0.05, 10).ft / sheet.ft).toBeGreaterThan(0.85);
    expect(at(card, 0.05, 10).ft / sheet.ft).toBeLessThan(1.3);
    expect(cob(card, 10) / sheet.cob).toBeGreaterThan(0.5);
    expect(cob(card, 10) / sheet.cob).toBeLessThan(1.3);
  });
  test('the 139-type at half an ampere', async () => {
    const card = transistorModels.d139;
    const run = await simulateReal(
      `ib 0 b 50m\nic 0 c 0.5\nq1 c b 0 t\n.model t npn(${modelCard(card)})`,
      '.op',
    );
    expect(run.vector('v(c)')[0]).toBeLessThan(0.5);
    const base = at(card, 0.5, 2).vbe + 0.5 * card.re + (0.5 / at(card, 0.5, 2).hfe) * card.rb;
    expect(base).toBeLessThan(1);
    expect(at(card, 0.5, 2).hfe).toBeGreaterThan(25);
  });
});
