import { describe, expect, test } from 'vitest';
import { ellipticK } from '../../src/engine/circuit/elliptic.ts';
import {
  edgeForAttenuation,
  edgeForNotch,
  lowestNotch,
  nome,
} from '../../src/engine/circuit/ellipticEdge.ts';
import { ellipticF } from '../../src/engine/circuit/ellipticF.ts';
import { ellipticPrototype } from '../../src/engine/circuit/ellipticPrototype.ts';
import { jacobi } from '../../src/engine/circuit/jacobi.ts';
import { ladderTransfer, TRANSFER_SIZE } from '../../src/engine/circuit/ladderTransfer.ts';
import { capacitor, type OutputLadder } from '../../src/engine/circuit/outputLadder.ts';

const none = Number.POSITIVE_INFINITY;

describe('elliptic functions', () => {
  // Source: Abramowitz & Stegun, 16.1 by definition; table 17.5 from memory.
  test('the integral undoes the function', () => {
    for (const m of [0.02, 0.25, 0.7, 0.99]) {
      for (const share of [0.1, 0.4, 0.77, 0.98]) {
        const u = share * ellipticK(m);
        const { sn, cn, dn } = jacobi(u, m);
        expect(ellipticF(sn / cn, m)).toBeCloseTo(u, 12);
        expect(sn * sn + cn * cn).toBeCloseTo(1, 14);
        expect(dn * dn + m * sn * sn).toBeCloseTo(1, 14);
      }
    }
    // F(45°|m = 1/4) = 0.80436610 by the table; F(φ|0) = φ; F(φ|1) = artanh sin φ.
    expect(ellipticF(1, 0.25)).toBeCloseTo(0.8043661, 7);
    expect(ellipticF(Math.tan(0.7), 0)).toBeCloseTo(0.7, 14);
    expect(ellipticF(Math.tan(0.7), 1)).toBeCloseTo(Math.atanh(Math.sin(0.7)), 14);
  });

  // Source: definition, q = exp(−πK′/K).
  test('nome', () => {
    for (const k of [0.01, 0.3, 0.8, 0.95, 0.99]) {
      const q = Math.exp((-Math.PI * ellipticK(1 - k * k)) / ellipticK(k * k));
      expect(nome(k) / q).toBeCloseTo(1, 10);
    }
    // Its first term is all that is left of a small modulus: k²/16.
    expect(nome(1e-6) / (1e-12 / 16)).toBeCloseTo(1, 10);
  });
});

/** The prototype as a ladder between one ohm at both ends, its ripple edge at 1/2π Hz. */
function ladderOf({ shunts, traps }: ReturnType<typeof ellipticPrototype>): OutputLadder {
  const branches = shunts.flatMap((c, k) => {
    const trap = traps[k];
    const shunt = capacitor('shunt', c, none);
    return trap
      ? [shunt, { place: 'series', l: trap.l, c: trap.c, ql: none, qc: none } as const]
      : [shunt];
  });
  return {
    branches,
    ratio: 1,
    sourceResistance: 1,
    sourceCapacitance: 0,
    load: 1,
    reference: 1,
  };
}

function loss(ladder: OutputLadder, w: number): number {
  const out = new Float64Array(TRANSFER_SIZE);
  ladderTransfer(ladder, w / (2 * Math.PI), out);
  return -20 * Math.log10(2 * Math.hypot(out[0] ?? 0, out[1] ?? 0));
}

describe('elliptic prototypes', () => {
  // Source: Winder, Analog and Digital Filter Design, table 2.30, 0.1 dB ripple. Its last digits are
  // partly cut, not rounded: one unit of the last digit is allowed.
  test.each([
    [3, 2.5, [0.9472, 0.9472], [[1.0173, 0.1205]], 30.52],
    [
      5,
      2.0,
      [1.0876, 1.7938, 0.9772],
      [
        [1.2932, 0.07317],
        [1.1433, 0.20038],
      ],
      58.9,
    ],
    [
      5,
      1.5,
      [1.0279, 1.6318, 0.8155],
      [
        [1.2152, 0.1513],
        [0.9353, 0.4408],
      ],
      43.41,
    ],
  ] as const)('published, %d elements, stop edge %f', (n, edge, shunts, traps, attenuation) => {
    const made = ellipticPrototype(n, 0.1, edge);
    made.shunts.forEach((c, k) => {
      expect(Math.abs(c - (shunts[k] ?? 0))).toBeLessThan(1.001e-4);
    });
    made.traps.forEach(({ l, c }, k) => {
      expect(Math.abs(l - (traps[k]?.[0] ?? 0))).toBeLessThan(1.001e-4);
      expect(Math.abs(c - (traps[k]?.[1] ?? 0))).toBeLessThan(1.001e-4);
    });
    expect(Math.abs(made.attenuation - attenuation)).toBeLessThan(0.0101);
  });

  // Source: what an elliptic filter is: equal ripple in the passband, equal minima in the stop band.
  test.each([
    [3, 0.044, 2.2],
    [5, 0.01, 1.8],
    [5, 0.5, 1.2],
    [7, 0.1, 1.3],
    [7, 0.044, 1.6],
  ])('%d elements, %f dB, edge %f: ripple and stop band', (n, ripple, edge) => {
    const made = ellipticPrototype(n, ripple, edge);
    const ladder = ladderOf(made);
    const passband: number[] = [];
    const stopband: number[] = [];
    for (let i = 1; i <= 4000; i += 1) passband.push(loss(ladder, i / 4000));
    for (let w = edge; w < 40; w *= 1.0005) stopband.push(loss(ladder, w));
    expect(Math.max(...passband)).toBeCloseTo(ripple, 6);
    expect(Math.min(...passband)).toBeGreaterThan(-1e-9);
    // So many times the ripple is met, the edge included.
    const crests = passband.filter(
      (x, i) => x > (passband[i - 1] ?? 0) && x >= (passband[i + 1] ?? -1) && x > 0.999 * ripple,
    );
    expect(crests).toHaveLength((n + 1) / 2);
    expect(Math.min(...stopband)).toBeCloseTo(made.attenuation, 3);
    expect(loss(ladder, edge)).toBeCloseTo(made.attenuation, 6);
    for (const { l, c } of made.traps) expect(Math.min(l, c)).toBeGreaterThan(0);
    expect(Math.min(...made.shunts)).toBeGreaterThan(0);
  });

  // Source: the table above, turned round: 30.52 dB at 2.5, 58.90 dB at 2.0.
  test('edge for an attenuation, and for a notch', () => {
    expect(edgeForAttenuation(3, 0.1, 30.52)).toBeCloseTo(2.5, 3);
    expect(edgeForAttenuation(5, 0.1, 58.9)).toBeCloseTo(2.0, 3);
    for (const n of [3, 5, 7]) {
      const edge = edgeForNotch(n, 1.7);
      expect(lowestNotch(n, edge)).toBeCloseTo(1.7, 12);
      const { traps } = ellipticPrototype(n, 0.1, edge);
      expect(Math.min(...traps.map(({ notch }) => notch))).toBeCloseTo(1.7, 12);
      const { attenuation } = ellipticPrototype(n, 0.1, edge);
      expect(edgeForAttenuation(n, 0.1, attenuation)).toBeCloseTo(edge, 9);
    }
  });
});
