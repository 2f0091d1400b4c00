import { describe, expect, test } from 'vitest';
import {
  alignedLadder,
  aligningCapacitors,
  meshFrequency,
} from '../../src/engine/circuit/alignedLadder.ts';
import { couplings } from '../../src/engine/circuit/couplings.ts';
import { type Crystal, crystalOf, crystalReactance } from '../../src/engine/circuit/crystal.ts';
import { crystalLadder } from '../../src/engine/circuit/crystalLadder.ts';
import { between, type Ladder } from '../../src/engine/circuit/ladder.ts';
import { gainAt } from '../../src/engine/circuit/ladderGain.ts';

const bare = { capacitorQ: Number.POSITIVE_INFINITY, stray: 2e-12 };
const alike = crystalOf(7.2e6, 0.03, 1e9, 4e-12);
const design = crystalLadder(alike, couplings('chebyshev', 6, 0.1), 700, bare);
const offsets = [40, -110, 25, 0, -60, 90];
const unlike = offsets.map((off, i) => crystalOf(7.2e6 + off, 0.03 * (1 + i / 500), 1e9, 4e-12));

describe('a capacitor for each mesh', () => {
  test('alike crystals get those of the design', () => {
    const made = alignedLadder(design, Array(6).fill(alike), 'each');
    for (const [i, c] of design.series.entries()) {
      expect(Math.abs((made.series[i] ?? 0) - c)).toBeLessThanOrEqual(1e-4 * c);
    }
  });

  // Mesh impedance with its neighbours open, written out: Kirchhoff round one mesh.
  test('all meshes of unlike crystals resonate at one frequency, and one has no capacitor', () => {
    const made = alignedLadder(design, unlike, 'each');
    const own = unlike.map((_, i) => meshFrequency(design, unlike, i));
    const f = Math.max(...own);
    const w = 2 * Math.PI * f;
    for (const [i, crystal] of unlike.entries()) {
      const parts = [made.series[i], made.coupling[i - 1], made.coupling[i]];
      const x = parts.map((c, k) => (c ? 1 / (w * (c + (k === 0 ? 0 : 2e-12))) : 0));
      const left = crystalReactance(crystal, f) - x.reduce((a, b) => a + b);
      expect(Math.abs(left)).toBeLessThan(1e-6 * crystalReactance(crystal, f));
    }
    expect([...made.series].filter((c) => c === 0)).toHaveLength(1);
    expect([...made.series].every((c) => c >= 0)).toBe(true);
  });

  // Without holders the reactance is a straight line of slope 4πLm, so that a constant reactance in
  // a mesh is the same as another frequency: the response of the alike must come back, shifted.
  test('the response of the alike comes back', () => {
    const one = (off: number) => crystalOf(7.2e6 + off, 0.03, 1e9, 0);
    const exact = crystalLadder(one(0), couplings('chebyshev', 6, 0.1), 450, bare);
    const unequal = offsets.map(one);
    const made = alignedLadder(exact, unequal, 'each');
    const raw = alignedLadder(exact, unequal, 'design');
    const meshes = (crystals: readonly Crystal[]) =>
      Math.max(...crystals.map((_, i) => meshFrequency(exact, crystals, i)));
    const shift = meshes(unequal) - meshes(Array(6).fill(one(0)));
    let [worst, worstRaw] = [0, 0];
    for (let f = 7.2e6; f < 7.2e6 + 4000; f += 50) {
      const wanted = gainAt(exact, f);
      if (wanted < -3) continue;
      worst = Math.max(worst, Math.abs(gainAt(made, f + shift) - wanted));
      worstRaw = Math.max(worstRaw, Math.abs(gainAt(raw, f) - wanted));
    }
    expect(worst).toBeLessThan(0.005);
    expect(worstRaw).toBeGreaterThan(0.3);
  });

  test('rounding is asked for what is fitted only', () => {
    const asked: number[] = [];
    const made = alignedLadder(design, unlike, 'each', (c) => {
      asked.push(c);
      return 2 * c;
    });
    expect(asked).toHaveLength(5);
    expect([...made.series]).toEqual([...aligningCapacitors(design, unlike)].map((c) => 2 * c));
  });
});

test('the design’s own capacitors, and none', () => {
  expect(alignedLadder(design, unlike, 'design').series).toBe(design.series);
  expect([...alignedLadder(design, unlike, 'none').series]).toEqual([0, 0, 0, 0, 0, 0]);
  expect([...alignedLadder(design, unlike, 'none').lm]).toEqual(unlike.map(({ lm }) => lm));
});

// Shunt form: the nodal admittance with both neighbours shorted, written out.
test('nodes of crystals to ground are brought down to the lowest', () => {
  const nodes: Ladder = {
    ...between(design, [400, 0], [400, 0]),
    form: 'shunt',
    series: new Float64Array(6),
    stray: new Float64Array(6).fill(1e-12),
  };
  const made = alignedLadder(nodes, unlike, 'each');
  const own = unlike.map((_, i) => meshFrequency(nodes, unlike, i));
  const w = 2 * Math.PI * Math.min(...own);
  for (const [i, crystal] of unlike.entries()) {
    const c = [made.series[i], made.coupling[i - 1], made.coupling[i], 1e-12];
    const b = w * c.reduce<number>((sum, one) => sum + (one ?? 0), 0);
    expect(b * crystalReactance(crystal, w / (2 * Math.PI))).toBeCloseTo(1, 6);
  }
});
