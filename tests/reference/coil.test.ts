import { describe, expect, test } from 'vitest';
import { airCoil, airCoilTurns, wheelerCoil } from '../../src/engine/circuit/airCoil.ts';
import { shuntLoss, turnsForReactance } from '../../src/engine/circuit/broadbandTransformer.ts';
import { ellipticE, ellipticK } from '../../src/engine/circuit/elliptic.ts';
import { toroidCapacitance } from '../../src/engine/circuit/toroidCapacitance.ts';
import { proximityRise, skinDepth, skinRise } from '../../src/engine/circuit/wireLoss.ts';

describe('air coil', () => {
  // Source: Nagaoka's coefficient by 2R/l (NBS Circular 74 table 21, from memory), 4 digits.
  test.each([
    [0.1, 0.9588],
    [0.5, 0.8181],
    [1, 0.6884],
    [2, 0.5255],
    [5, 0.3198],
  ])('Nagaoka’s coefficient at diameter over length %f', (ratio, k) => {
    const d = 0.02;
    const l = d / ratio;
    const long = (4e-7 * Math.PI * Math.PI * d * d) / (4 * l);
    expect(Math.abs(airCoil(1, d, l) / long - k)).toBeLessThanOrEqual(0.51e-4 + 1e-9);
  });

  // Source: Wheeler 1928 states 1 % for lengths over 0.8 radius.
  test.each([0.5, 1, 2, 4, 8])('Wheeler within 1.2 % at length over diameter %f', (ratio) => {
    const d = 0.012;
    expect(Math.abs(wheelerCoil(14, d, ratio * d) / airCoil(14, d, ratio * d) - 1)).toBeLessThan(
      0.012,
    );
  });

  // Source: field of a long solenoid, L → μ₀N²A/ℓ, with the end correction 1 − 4D/(3πℓ).
  test('a long coil', () => {
    const [d, l] = [1e-3, 1];
    const long = (4e-7 * Math.PI * 100 ** 2 * Math.PI * d * d) / (4 * l);
    expect(airCoil(100, d, l) / long).toBeCloseTo(1 - (4 * d) / (3 * Math.PI * l), 6);
  });

  // Source: definition; K(0) = E(0) = π/2, E(1) = 1; Legendre's relation EK' + E'K − KK' = π/2.
  test('elliptic integrals', () => {
    expect(ellipticK(0)).toBeCloseTo(Math.PI / 2, 15);
    expect(ellipticE(0)).toBeCloseTo(Math.PI / 2, 15);
    expect(ellipticE(1)).toBe(1);
    // Abramowitz & Stegun table 17.1 (from memory): K(0.5) = 1.8540746773.
    expect(ellipticK(0.5)).toBeCloseTo(1.8540746773, 10);
    for (const m of [0.1, 0.3, 0.77, 0.99]) {
      const legendre =
        ellipticE(m) * ellipticK(1 - m) +
        ellipticE(1 - m) * ellipticK(m) -
        ellipticK(m) * ellipticK(1 - m);
      expect(legendre).toBeCloseTo(Math.PI / 2, 13);
    }
  });

  test('turns give back the inductance', () => {
    for (const l of [0.2e-6, 1.1e-6, 15e-6]) {
      const n = airCoilTurns(l, 0.01, 1e-3);
      expect(airCoil(n, 0.01, n * 1e-3) / l).toBeCloseTo(1, 12);
    }
  });
});

describe('loss of wire', () => {
  // Source: copper at 20 °C: 66.1 µm over the root of the frequency in MHz.
  test('skin depth', () => {
    expect(skinDepth(1e6) * 1e6).toBeCloseTo(66.1, 1);
    expect(skinDepth(25e6) * 1e6).toBeCloseTo(66.1 / 5, 1);
  });

  // Source: exact solution, R/R₀ = Re[(z/2)·I₀(z)/I₁(z)], z = (1 + j)·radius/δ, by power series.
  test('skin effect within 1 % of the exact solution', () => {
    for (let x = 0.05; x < 22; x *= 1.08) {
      const depth = skinDepth(7e6);
      const rise = skinRise(2 * x * depth, 7e6);
      expect(Math.abs(rise / besselRise(x) - 1), `radius ${x} skin depths`).toBeLessThan(0.01);
    }
  });

  // Source: Medhurst 1947, long coils (from memory): bare diameter over pitch, resistance ratio.
  test.each([
    [1, 3.41],
    [0.9, 3.11],
    [0.8, 2.81],
    [0.7, 2.51],
    [0.6, 2.22],
    [0.5, 1.93],
    [0.4, 1.65],
    [0.3, 1.4],
    [0.2, 1.19],
    [0.1, 1.05],
  ])('proximity at %f', (s, printed) => {
    expect(Math.abs(proximityRise(s) / printed - 1)).toBeLessThan(0.055);
  });

  // Common practice, no source: a close-wound layer on a half-inch core has one to four picofarad.
  test('self-capacitance of a small winding is a few picofarad', () => {
    const c = toroidCapacitance(16e-3, 0.5e-3, 0.544e-3);
    expect(c).toBeGreaterThan(1e-12);
    expect(c).toBeLessThan(5e-12);
  });
});

/** Resistance rise of a round wire by the power series of the modified Bessel functions. */
function besselRise(x: number): number {
  // z² = 2j x²; I0 = Σ (z²/4)^k/(k!)², I1 = (z/2) Σ (z²/4)^k/(k!(k+1)!); R/R0 = Re[I0/(2·Σ1)].
  const q = (x * x) / 2;
  let [ar, ai] = [0, 0];
  let [br, bi] = [0, 0];
  let size = 1;
  for (let k = 0; k < 200; k += 1) {
    if (k > 0) size *= q / (k * k);
    // j^k
    const [re, im] = [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ][k % 4] as [number, number];
    ar += size * re;
    ai += size * im;
    br += (size / (k + 1)) * re;
    bi += (size / (k + 1)) * im;
  }
  return (ar * br + ai * bi) / (br * br + bi * bi);
}

describe('broadband winding', () => {
  // Source: closed form 10 log(1 + (R/2X)²): 0.07, 0.26 and 0.97 dB.
  test.each([
    [4, 0.07],
    [2, 0.26],
    [1, 0.97],
  ])('reactance %d times the resistance costs %f dB', (times, printed) => {
    expect(
      Math.abs(shuntLoss(50, Number.POSITIVE_INFINITY, 50 * times) - printed),
    ).toBeLessThanOrEqual(0.00501);
  });

  // Source: a published build: five times 81 Ω at 9 MHz on FT37-43 (350 nH) is 4.5 turns.
  test('turns for a reactance', () => {
    expect(turnsForReactance(81, 5, 350e-9, 1, 9e6)).toBeCloseTo(4.5, 1);
  });

  // Source: ωL: 5 turns at 420 nH are 10.5 µH, 468 Ω at 7.1 MHz; at 350 nH 390 Ω.
  test.each([
    [420e-9, 468],
    [350e-9, 390],
  ])('five turns at %f H', (al, ohms) => {
    expect(2 * Math.PI * 7.1e6 * 25 * al).toBeCloseTo(ohms, -0.4);
    expect(turnsForReactance(ohms, 1, al, 1, 7.1e6)).toBeCloseTo(5, 2);
  });
});
