import { describe, expect, test } from 'vitest';
import { airCoil } from '../../src/engine/circuit/airCoil.ts';
import { airCoilOf } from '../../src/engine/circuit/winding/airCoilOf.ts';
import { bunchedRise, shareForRise } from '../../src/engine/circuit/winding/bunchedRise.ts';
import { airCapacitance, medhurstRise } from '../../src/engine/circuit/winding/medhurst.ts';
import { toroidCoil, type WireSize } from '../../src/engine/circuit/winding/toroidCoil.ts';
import { coilWinder, type RingWound } from '../../src/engine/circuit/winding/windCoil.ts';
import { type Core, cores } from '../../src/engine/data/cores.ts';

const ring = (title: string) => {
  const core = cores.find((c) => c.title === title) as Core;
  return { permeability: core.mix.permeability, size: core.size };
};

describe('turns pushed together', () => {
  // Source: a builder's readings, at second hand: ten turns 0.46 µH spread, 0.77 µH squeezed, +67 %.
  // Core and wire are not told; the factor of 4.6 nH is nearest to T50-2 (4.9). An anchor, no more:
  // the rise within a half.
  test('ten turns of 0.5 mm wire on T50-2 gain about two thirds', () => {
    const touching = (10 * Math.asin(0.544 / (7.7 - 0.544))) / Math.PI;
    const rise = bunchedRise(touching, ring('T50-2')) / bunchedRise(11 / 12, ring('T50-2')) - 1;
    expect(rise).toBeGreaterThan(0.67 / 2);
    expect(rise).toBeLessThan(0.67 * 1.5);
  });

  // Source: the line of flux solved by finite differences, 4000 pieces round the ring.
  test.each([0.1, 0.24, 0.5, 0.8])(
    'covering %f of T50-2: closed form against sections',
    (share) => {
      const { size, permeability } = ring('T50-2');
      const n = 4000;
      const dx = size.path / n;
      const mean = (size.outer + size.inner) / 4;
      const radius = Math.sqrt(size.area / Math.PI);
      const reluctance = dx / (permeability * size.area);
      const leak = (2 * Math.PI * dx) / Math.log((8 * mean) / radius);
      // Node potentials u on the ring, u_i to air by `leak`; branch i from node i to i + 1 with a source.
      const source = (i: number) => (i < Math.round(share * n) ? 1 / Math.round(share * n) : 0);
      const u = solveRing(n, 1 / reluctance, leak, source);
      let linked = 0;
      for (let i = 0; i < n; i += 1) {
        const flux = ((u[i] ?? 0) - (u[(i + 1) % n] ?? 0) + source(i)) / reluctance;
        linked += flux * source(i);
      }
      const even = 1 / (reluctance * n);
      expect(linked / even / bunchedRise(share, ring('T50-2'))).toBeCloseTo(1, 3);
    },
  );

  test('spread all round nothing is gained, and a ferrite hardly gains', () => {
    expect(bunchedRise(1, ring('T50-2'))).toBe(1);
    expect(bunchedRise(1 - 1e-9, ring('T50-2'))).toBeCloseTo(1, 8);
    expect(bunchedRise(0.2, ring('FT37-43'))).toBeLessThan(1.03);
  });

  test('the share gives back the rise', () => {
    const share = shareForRise(1.2, ring('T37-6'), 0.2, 11 / 12) as number;
    expect(bunchedRise(share, ring('T37-6'))).toBeCloseTo(1.2, 10);
    expect(shareForRise(9, ring('T37-6'), 0.2, 11 / 12)).toBeNull();
  });
});

describe('coil on air', () => {
  // Source: Medhurst 1947, table of φ (from memory).
  test.each([
    [1, 1, 5.55],
    [0.5, 2, 1.74],
    [0.7, 4, 2.27],
    [0.3, 10, 1.35],
  ])('wire over pitch %f, length over diameter %f', (s, slender, printed) => {
    expect(medhurstRise(s, slender)).toBeCloseTo(printed, 9);
  });
  test('between the figures of the table it goes straight, beyond them to the long coil', () => {
    expect(medhurstRise(0.55, 3)).toBeCloseTo((1.74 + 1.78 + 1.98 + 2.01) / 4, 9);
    expect(medhurstRise(1, 1e6)).toBeCloseTo(3.41, 5);
    expect(medhurstRise(0, 3)).toBeCloseTo(1, 9);
  });

  // Source: Medhurst's H, self-capacitance in pF for each cm of diameter, one end at ground (from
  // memory): ℓ/D 0.5: 0.50; 1: 0.46; 2: 0.50; 4: 0.66; 10: 1.32. Printed to two digits.
  test.each([
    [0.5, 0.5],
    [1, 0.46],
    [2, 0.5],
    [4, 0.66],
    [10, 1.32],
  ])('self-capacitance at length over diameter %f', (slender, printed) => {
    expect(Math.abs((airCapacitance(1e-2, slender * 1e-2) * 1e12) / printed - 1)).toBeLessThan(
      0.05,
    );
  });

  // Source: the exact current sheet (Lorenz), and a helix unrolled.
  test('turns, inductance and wire', () => {
    const coil = airCoilOf(0.5e-6, { former: 8e-3, wire: 0.8e-3, spacing: 1.25 }, 0.02, 14.2e6);
    expect(airCoil(coil.turns, 8.8e-3, coil.turns * 1e-3)).toBeCloseTo(0.5e-6, 15);
    expect(coil.l).toBeCloseTo(0.5e-6, 15);
    expect(coil.length).toBeCloseTo(coil.turns * Math.hypot(Math.PI * 8.8e-3, 1e-3) + 0.04, 12);
    // Common practice, no source: a centimetre of thick wire on air reaches 100 to 300.
    expect(coil.q).toBeGreaterThan(100);
    expect(coil.q).toBeLessThan(300);
  });

  // Source: Wheeler 1928, worked by hand: 1 inch across, 1 inch long, 20 turns: 100/(4.5 + 10) = 6.9 µH.
  test('Wheeler’s kind of coil', () => {
    const wire = 25.4e-3 / 20 / 1.25;
    const coil = airCoilOf(6.9e-6, { former: 25.4e-3 - wire, wire, spacing: 1.25 }, 0, 7e6);
    expect(Math.abs(coil.turns / 20 - 1)).toBeLessThan(0.01);
  });

  // Below one turn the sheet is so short that its formula loses digits to subtraction.
  test('solved for any wire and former from one turn up', () => {
    for (const l of [20e-9, 1e-6, 50e-6, 500e-6]) {
      for (const former of [2e-3, 20e-3, 200e-3]) {
        for (const wire of [0.1e-3, 1e-3, 5e-3]) {
          const coil = airCoilOf(l, { former, wire, spacing: 1.05 }, 0, 7e6);
          if (coil.turns >= 1) expect(coil.l / l, `${l} ${former} ${wire}`).toBeCloseTo(1, 11);
        }
      }
    }
  });
});

describe('a stock that is counted', () => {
  const q = (title: string) => {
    const core = cores.find((c) => c.title === title) as Core;
    return { ...core, coreQ: core.mix.coreQ };
  };
  const stock = {
    row: [q('T37-2'), q('T50-2')],
    pieces: [1, 1],
    otherwise: [q('T37-2')],
    wires: [{ bare: 0.5e-3, overall: 0.544e-3 }],
    fill: 1,
    tail: 0.04,
    air: null,
  };
  // Source: counting.
  test('each coil takes its piece, and the third finds none', () => {
    const wind = coilWinder(stock, 7.2e6);
    const made = [1e-6, 1e-6, 1e-6].map(
      (l) => wind(l, 0) as RingWound<ReturnType<typeof q>, WireSize>,
    );
    expect(made.map(({ core }) => core.title)).toEqual(['T37-2', 'T50-2', 'T37-2']);
    expect(made.map(({ inStock }) => inStock)).toEqual([true, true, false]);
  });
  test('what is gone is not taken again', () => {
    const first = coilWinder(stock, 7.2e6, [stock.row[0] as (typeof stock.row)[0]])(1e-6, 0);
    expect(first.on === 'ring' && first.core.title).toBe('T50-2');
  });
});

test('a coil on a ring: what belongs together does', () => {
  const core = cores.find(({ title }) => title === 'T50-2') as Core;
  const wire = { bare: 0.5e-3, overall: 0.544e-3 };
  const coil = toroidCoil(19, { ...core, coreQ: core.mix.coreQ }, wire, 0.04, 7.1e6);
  // Source: 49 µH for 100 turns; geometry of a turn; Thomson's formula.
  expect(coil.l * 1e6).toBeCloseTo(1.77, 2);
  expect(coil.length).toBeCloseTo(19 * (2 * 4.83e-3 + 5e-3 + Math.PI * 0.544e-3) + 0.08, 12);
  expect(coil.resonance * 2 * Math.PI * Math.sqrt(coil.l * coil.selfCapacitance)).toBeCloseTo(
    1,
    12,
  );
});

/** Potentials of a ring of nodes, each joined to the next (with a source in the branch) and to air. */
function solveRing(
  n: number,
  g: number,
  leak: number,
  source: (i: number) => number,
): Float64Array {
  // Cyclic tridiagonal by Sherman–Morrison: (2g + leak)·u_i − g·u_(i−1) − g·u_(i+1) = g·(s_(i−1) − s_i).
  const right = Float64Array.from(
    { length: n },
    (_, i) => g * (source((i + n - 1) % n) - source(i)),
  );
  const gamma = -(2 * g + leak);
  const diagonal = new Float64Array(n).fill(2 * g + leak);
  diagonal[0] = 2 * g + leak - gamma;
  diagonal[n - 1] = 2 * g + leak - (g * g) / gamma;
  const thomas = (rhs: Float64Array) => {
    const c = new Float64Array(n);
    const d = new Float64Array(n);
    for (let i = 0; i < n; i += 1) {
      const m = (diagonal[i] ?? 0) + (i > 0 ? g * (c[i - 1] ?? 0) : 0);
      c[i] = -g / m;
      d[i] = ((rhs[i] ?? 0) + (i > 0 ? g * (d[i - 1] ?? 0) : 0)) / m;
    }
    for (let i = n - 2; i >= 0; i -= 1) d[i] = (d[i] ?? 0) - (c[i] ?? 0) * (d[i + 1] ?? 0);
    return d;
  };
  const w = new Float64Array(n);
  w[0] = gamma;
  w[n - 1] = -g;
  const y = thomas(right);
  const z = thomas(w);
  const vy = (y[0] ?? 0) - (g / gamma) * (y[n - 1] ?? 0);
  const vz = (z[0] ?? 0) - (g / gamma) * (z[n - 1] ?? 0);
  return y.map((value, i) => value - (vy / (1 + vz)) * (z[i] ?? 0));
}
