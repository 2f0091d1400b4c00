import { describe, expect, test } from 'vitest';
import {
  besideEachOther,
  leftByDirectCurrent,
  pairLeakage,
  shuntLoss,
  surfaceRise,
} from '../../src/engine/circuit/broadbandTransformer.ts';
import { ferritePermeability } from '../../src/engine/circuit/ferritePermeability.ts';
import { chokes } from '../../src/engine/data/chokes.ts';
import { cores } from '../../src/engine/data/cores.ts';
import { ferrites } from '../../src/engine/data/ferrites.ts';
import { twoHoleCores } from '../../src/engine/data/twoHoleCores.ts';

const list = Object.entries(ferrites);

describe('permeability against frequency', () => {
  // Source: makers' catalogues, tan δ/μi at a frequency (from memory): mix 43 250e-6 at 1 MHz, 61
  // 30e-6 at 1 MHz, 73 10e-6 and 77 15e-6 at 0.1 MHz. Guaranteed as the most, reached to a third at least.
  test.each(list)('loss factor of %s', (_, { curve, lossFactor, permeability }) => {
    const [most, at] = lossFactor;
    const { stores, loses } = ferritePermeability(curve, at);
    const factor = loses / stores / permeability;
    expect(factor).toBeLessThanOrEqual(most);
    expect(factor).toBeGreaterThan(most / 3);
  });

  // Source: Kramers (1927) and Kronig (1926): what an effect stores follows from what it loses at all
  // frequencies, μ′(f) − 1 = 2/π·P∫ x μ″(x)/(x² − f²) dx. A curve that broke it could not exist.
  test.each(list)('μ′ of %s follows from its μ″', (_, { curve, permeability }) => {
    for (const f of [1e6, 3.6e6, 7.1e6, 14.2e6]) {
      const { stores } = ferritePermeability(curve, f);
      expect(Math.abs(storedByLoss(curve, f) - stores)).toBeLessThan(0.05 * permeability);
    }
  });

  // Source: K. S. Cole, R. H. Cole, J. Chem. Phys. 9, 1941: a relaxation spread out by its exponent
  // (1: Debye's single one). Frequencies and exponents by Snoek's limit and the trend of makers'
  // curves, from memory; the tabulated figures are round and may be 4 % of μi off.
  test.each([
    ['43', 8e6, 0.75],
    ['73', 4e6, 1],
    ['77', 3.5e6, 1],
  ] as const)('%s against one relaxation', (key, relaxation, exponent) => {
    const { curve, permeability } = ferrites[key];
    for (const f of [0.2e6, 1.8e6, 3.6e6, 7.1e6, 14.2e6, 28.5e6]) {
      const size = (f / relaxation) ** exponent;
      const [re, im] = [
        1 + size * Math.cos((exponent * Math.PI) / 2),
        size * Math.sin((exponent * Math.PI) / 2),
      ];
      const scale = (permeability - 1) / (re * re + im * im);
      const { stores, loses } = ferritePermeability(curve, f);
      expect(Math.abs(stores - 1 - scale * re)).toBeLessThan(0.02 * permeability);
      expect(Math.abs(loses - scale * im)).toBeLessThan(0.02 * permeability);
    }
  });

  // Source: J. L. Snoek, Physica 14, 1948: μi times the frequency where losses peak is near 8 GHz for
  // nickel-zinc ferrites, within a factor of two.
  test.each(['43', '61'] as const)('Snoek’s limit of %s', (key) => {
    const { curve, permeability } = ferrites[key];
    const [at] = curve.reduce((best, row) => (row[2] > best[2] ? row : best));
    expect(at * permeability).toBeGreaterThan(4e9);
    expect(at * permeability).toBeLessThan(16e9);
  });

  test('the rows themselves, the middle of a stretch, and beyond', () => {
    const curve = [
      [1e6, 100, 1],
      [4e6, 400, 16],
    ] as const;
    expect(ferritePermeability(curve, 1e6)).toEqual({ stores: 100, loses: 1 });
    const middle = ferritePermeability(curve, 2e6);
    expect(middle.stores).toBeCloseTo(200, 9);
    expect(middle.loses).toBeCloseTo(4, 9);
    expect(ferritePermeability(curve, 8e6).stores).toBeCloseTo(800, 9);
    expect(ferritePermeability(curve, 0.5e6).loses).toBeCloseTo(0.25, 9);
  });
});

describe('cores with two holes', () => {
  // Source: closed form: each hole is a sleeve of 0.2·μ·length·ln(outer/hole) nH; the middle wall
  // serves both, so the pair has less than two of them and more than half of that.
  test.each(twoHoleCores)('$title', ({ ferrite, length, height, hole, al }) => {
    const two = 2 * 2e-7 * ferrites[ferrite].permeability * length * Math.log(height / hole);
    expect(al).toBeLessThan(1.1 * two);
    expect(al).toBeGreaterThan(0.6 * two);
  });
});

describe('a winding across its circuit', () => {
  // Source: closed form: shunt reactance of k times R between equal R costs 10·log(1 + 1/(2k)²);
  // common practice quotes 0.07, 0.26 and 0.97 dB.
  test.each([
    [4, 0.07],
    [2, 0.26],
    [1, 0.97],
  ])('reactance %d times the resistance', (k, loss) => {
    expect(Math.abs(shuntLoss(50, 1e15, 50 * k) - loss)).toBeLessThan(0.005);
  });

  // Source: closed form: a shunt resistance of R between equal R loses 20·log(1.5) = 3.52 dB.
  test('resistance alone', () => {
    expect(shuntLoss(50, 50, 1e15)).toBeCloseTo(20 * Math.log10(1.5), 9);
  });

  // Source: series to parallel, closed form: 3 + j4 is 25/3 beside j25/4.
  test('series turned into parallel', () => {
    const { r, x } = besideEachOther(1, 1, 4, 3);
    expect(r).toBeCloseTo(25 / 3, 12);
    expect(x).toBeCloseTo(25 / 4, 12);
  });

  // Source: a two-wire line of air, Z₀ = 120 Ω·arcosh(s/d), L′ = Z₀/c: s/d = 2 makes 0.527 µH/m.
  test('leakage of a pair of wires', () => {
    expect(pairLeakage(1, 2, 1)).toBeCloseTo((119.9169832 * Math.acosh(2)) / 299792458, 11);
  });

  // Source: the rule's own definition: 1 mW/cm² warms by 1 K, 10 mW/cm² by 6.8 K.
  test('warming of a surface', () => {
    expect(surfaceRise(1e-3, 1e-4)).toBeCloseTo(1, 9);
    expect(surfaceRise(10e-3, 1e-4)).toBeCloseTo(6.8, 1);
  });

  // Source: closed form: with μ₀μiH = B_s the slope of tanh is 1/cosh²1 = 0.41997.
  test('what direct current leaves', () => {
    const field = 0.35 / (4e-7 * Math.PI * 800);
    expect(leftByDirectCurrent(field, 800, 0.35)).toBeCloseTo(0.419974, 5);
    expect(leftByDirectCurrent(0, 800, 0.35)).toBe(1);
  });
});

describe('published pieces of arithmetic', () => {
  const l = (al: number, turns: number) => al * turns ** 2;
  const al = (key: string) => cores.find((core) => core.key === key)?.al ?? 0;

  // Source: a build report's figure worked over: five turns on FT37-43, older 420 nH: 10.5 µH, 468 Ω
  // at 7.1 MHz; newer 350 nH: 390 Ω. Both with the permeability of low frequency.
  test('five turns on FT37-43', () => {
    expect(l(al('FT37-43-older'), 5) * 1e6).toBeCloseTo(10.5, 6);
    expect(2 * Math.PI * 7.1e6 * l(al('FT37-43-older'), 5)).toBeCloseTo(468, 0);
    expect(2 * Math.PI * 7.1e6 * l(al('FT37-43'), 5)).toBeCloseTo(390, 0);
  });
});

describe('ready-made chokes', () => {
  // Source: series resonance with what no winding is without: 0.2 to 9 pF in all (common practice).
  test.each(chokes)('$make of $l H', ({ l, resonance, q, resistance, qAt }) => {
    const c = 1 / ((2 * Math.PI * resonance) ** 2 * l);
    expect(c).toBeGreaterThan(0.2e-12);
    expect(c).toBeLessThan(9e-12);
    // The Q of a choke is less than its reactance over its resistance to direct current.
    expect(q).toBeLessThan((2 * Math.PI * qAt * l) / resistance);
  });
});

/** μ′ from μ″ by the integral over all frequencies, the pole taken out. */
function storedByLoss(curve: readonly (readonly [number, number, number])[], f: number): number {
  const [low, high, steps] = [Math.log(1e3), Math.log(1e11), 20000];
  const step = (high - low) / steps;
  const own = ferritePermeability(curve, f).loses;
  let sum = 0;
  for (let i = 0; i < steps; i += 1) {
    const x = Math.exp(low + (i + 0.5) * step);
    if (Math.abs(x / f - 1) < 1e-9) continue;
    const { loses } = ferritePermeability(curve, x);
    sum += ((x * loses - f * own) / (x * x - f * f)) * x * step;
  }
  const ends = (x: number) => 0.5 * Math.log(Math.abs((x - f) / (x + f)));
  return 1 + (2 / Math.PI) * (sum + own * (ends(Math.exp(high)) - ends(Math.exp(low))));
}
