import { describe, expect, test } from 'vitest';
import { factor, factored, solve } from '../../src/engine/circuit/nodal/factor.ts';
import {
  capacitor,
  crystal,
  currentSource,
  inductor,
  mutual,
  type Netlist,
  netlist,
  node,
  resistor,
  transconductance,
  transformer,
  voltageSource,
} from '../../src/engine/circuit/nodal/netlist.ts';
import { nodalSystem, stamp } from '../../src/engine/circuit/nodal/nodalSystem.ts';
import { rollett } from '../../src/engine/circuit/nodal/rollett.ts';
import { scattering, twoPort } from '../../src/engine/circuit/nodal/scattering.ts';
import { twoPortFigures } from '../../src/engine/circuit/nodal/twoPortFigures.ts';
import { nodalNetlist } from './nodalNetlist.ts';
import { bleeders, simulateAc } from './simulator.ts';

/** Largest difference of any node voltage from the simulator's, as a share of that voltage. */
async function worst(net: Netlist, sweep: { from: number; to: number; points: number }) {
  const nodes = [...Array(net.nodes).keys()].map((i) => `n${i + 1}`);
  const run = await simulateAc(`${nodalNetlist(net)}\n${bleeders(nodes)}`, sweep);
  const system = nodalSystem(net);
  const lu = factored(system.size);
  let most = 0;
  run.frequency.forEach((f, i) => {
    expect(factor(system, 2 * Math.PI * f, lu)).toBe(true);
    const re = system.sources.slice();
    const im = new Float64Array(system.size);
    solve(lu, re, im);
    nodes.forEach((name, n) => {
      const theirs = run.node(name);
      const [x, y] = [theirs.re[i] ?? 0, theirs.im[i] ?? 0];
      const off = Math.hypot((re[n] ?? 0) - x, (im[n] ?? 0) - y) / Math.hypot(x, y);
      most = Math.max(most, off);
    });
  });
  return most;
}

describe('node voltages meet the circuit simulator', () => {
  test('resistors, capacitors, inductors, a voltage source with its own resistance', async () => {
    const net = netlist();
    const [a, b, c] = [node(net), node(net), node(net)];
    voltageSource(net, a, 0, 1);
    resistor(net, a, b, 50);
    inductor(net, b, c, 1.1e-6);
    capacitor(net, b, 0, 470e-12);
    capacitor(net, c, 0, 330e-12);
    resistor(net, c, 0, 75);
    expect(await worst(net, { from: 1e5, to: 30e6, points: 5 })).toBeLessThan(1e-7);
  });

  test('a controlled source with feedback, driven by a current', async () => {
    const net = netlist();
    const [a, b, e] = [node(net), node(net), node(net)];
    currentSource(net, 0, a, 1e-3);
    resistor(net, a, 0, 200);
    resistor(net, a, b, 1500);
    capacitor(net, a, b, 5e-12);
    transconductance(net, b, e, a, e, 0.3);
    resistor(net, a, e, 500);
    resistor(net, e, 0, 22);
    resistor(net, b, 0, 200);
    expect(await worst(net, { from: 1e6, to: 300e6, points: 5 })).toBeLessThan(1e-7);
  });

  test('coupled coils: three windings, one turned round', async () => {
    const net = netlist();
    const [a, b, c, d] = [node(net), node(net), node(net), node(net)];
    voltageSource(net, a, 0, 1);
    resistor(net, a, b, 390);
    const one = inductor(net, b, 0, 40e-6);
    const two = inductor(net, 0, c, 2.5e-6);
    const three = inductor(net, d, 0, 10e-6);
    mutual(net, one, two, 0.99);
    mutual(net, one, three, 0.97);
    mutual(net, two, three, 0.98);
    resistor(net, c, 0, 25);
    resistor(net, d, 0, 1000);
    expect(await worst(net, { from: 1e5, to: 100e6, points: 5 })).toBeLessThan(1e-7);
  });

  test('an ideal transformer between nodes off ground', async () => {
    const net = netlist();
    const [a, b, c, d, e] = [node(net), node(net), node(net), node(net), node(net)];
    voltageSource(net, a, 0, 1);
    resistor(net, a, b, 200);
    transformer(net, b, c, d, e, 3);
    resistor(net, c, 0, 30);
    resistor(net, d, 0, 40);
    resistor(net, e, 0, 7);
    capacitor(net, d, e, 1e-9);
    expect(await worst(net, { from: 1e6, to: 10e6, points: 4 })).toBeLessThan(1e-7);
  });

  test('two crystals at their resonance', async () => {
    const net = netlist();
    const [a, b, c] = [node(net), node(net), node(net)];
    const unit = { lm: 14e-3, cm: 22.33e-15, rm: 9, c0: 3.5e-12 };
    currentSource(net, 0, a, 1);
    resistor(net, a, 0, 200);
    crystal(net, a, b, unit);
    capacitor(net, b, 0, 68e-12);
    crystal(net, b, c, { ...unit, lm: 14.001e-3 });
    resistor(net, c, 0, 200);
    expect(await worst(net, { from: 8.999e6, to: 9.004e6, points: 11 })).toBeLessThan(1e-5);
  });
});

describe('two-port figures', () => {
  const attenuator = () => {
    // 10 dB, 50 Ω: 96.25 Ω across each end, 71.15 Ω between them (handbook table of pads).
    const net = netlist();
    const ports = [node(net), node(net)] as const;
    resistor(net, ports[0], 0, 96.2475);
    resistor(net, ports[0], ports[1], 71.1512);
    resistor(net, ports[1], 0, 96.2475);
    return twoPort(net, ports, [50, 50]);
  };

  test('a matched pad: 10 dB, 50 Ω, K from its closed form', () => {
    const two = attenuator();
    expect(scattering(two, 7e6)).toBe(true);
    const { input, output, transducerGain, powerGain, voltageGain } = twoPortFigures(
      two.s,
      two.ends,
    );
    expect(10 * Math.log10(transducerGain)).toBeCloseTo(-10, 4);
    expect(10 * Math.log10(powerGain)).toBeCloseTo(-10, 4);
    expect(voltageGain.re).toBeCloseTo(Math.sqrt(0.1), 5);
    expect(input.re).toBeCloseTo(50, 3);
    expect(output.re).toBeCloseTo(50, 3);
    // s11 = s22 = 0, s12 = s21 = √0.1: K = (1 + 0.01)/0.2, |Δ| = 0.1.
    const { k, delta } = rollett(two.s);
    expect(k).toBeCloseTo(5.05, 4);
    expect(delta).toBeCloseTo(0.1, 5);
  });

  test('K from scattering equals K from admittances, and keeps to itself at any reference', () => {
    // Hybrid-pi without base resistance: y11 = gπ + jω(cπ + cμ), y12 = −jωcμ, y21 = gm − jωcμ,
    // y22 = go + jωcμ. K = (2·Re y11·Re y22 − Re(y12·y21))/|y12·y21| (Rollett 1962, eq. 2).
    const [gpi, cpi, gm, cmu, go] = [2e-3, 60e-12, 0.3, 5e-12, 1e-4];
    for (const f of [1e6, 7e6, 30e6, 150e6]) {
      const w = 2 * Math.PI * f;
      const real = -w * cmu * (w * cmu);
      const size = w * cmu * Math.hypot(gm, w * cmu);
      const expected = (2 * gpi * go - real) / size;
      for (const ends of [
        [50, 50],
        [200, 1000],
      ] as const) {
        const net = netlist();
        const ports = [node(net), node(net)] as const;
        resistor(net, ports[0], 0, 1 / gpi);
        capacitor(net, ports[0], 0, cpi);
        capacitor(net, ports[0], ports[1], cmu);
        transconductance(net, ports[1], 0, ports[0], 0, gm);
        resistor(net, ports[1], 0, 1 / go);
        const two = twoPort(net, ports, ends);
        scattering(two, f);
        expect(Math.abs(rollett(two.s).k / expected - 1)).toBeLessThan(1e-9);
      }
    }
  });

  test('figures between complex ends are those of a circuit that really has such ends', () => {
    const build = (source: number, sourceC: number, load: number, loadC: number) => {
      const net = netlist();
      const ports = [node(net), node(net)] as const;
      const inside = node(net);
      capacitor(net, ports[0], inside, 1e-9);
      resistor(net, inside, ports[1], 800);
      resistor(net, inside, 0, 300);
      transconductance(net, ports[1], 0, inside, 0, 0.04);
      resistor(net, ports[1], 0, 2000);
      if (sourceC > 0) capacitor(net, ports[0], 0, sourceC);
      if (loadC > 0) capacitor(net, ports[1], 0, loadC);
      const two = twoPort(net, ports, [source, load]);
      scattering(two, 9e6);
      return two;
    };
    const parallel = (r: number, c: number) => {
      const x = 2 * Math.PI * 9e6 * c * r;
      return { re: r / (1 + x * x), im: (-r * x) / (1 + x * x) };
    };
    const plain = build(50, 0, 50, 0);
    const figures = twoPortFigures(
      plain.s,
      plain.ends,
      parallel(200, 30e-12),
      parallel(390, 20e-12),
    );
    const real = build(200, 30e-12, 390, 20e-12);
    const asBuilt = twoPortFigures(real.s, real.ends);
    expect(figures.transducerGain / asBuilt.transducerGain).toBeCloseTo(1, 12);
    expect(figures.voltageGain.re / asBuilt.voltageGain.re).toBeCloseTo(1, 12);
    expect(figures.voltageGain.im / asBuilt.voltageGain.im).toBeCloseTo(1, 12);
  });

  test('a circuit that nothing holds has no answer and no NaN', () => {
    const net = netlist();
    const a = node(net);
    node(net);
    resistor(net, a, 0, 50);
    const system = nodalSystem(net);
    expect(factor(system, 1e6, factored(system.size))).toBe(false);
  });

  test('stamped anew after a change it is the circuit with the new value', () => {
    const build = (ohms: number) => {
      const net = netlist();
      const a = node(net);
      currentSource(net, 0, a, 1);
      const row = resistor(net, a, 0, ohms);
      return { net, row, system: nodalSystem(net) };
    };
    const { net, row, system } = build(50);
    net.value[row] = 75;
    stamp(net, system);
    expect(system).toEqual(build(75).system);
  });
});
