import { describe, expect, test } from 'vitest';
import { bentWave, modesOf } from '../../../src/engine/waves/bentWave.ts';
import { faddeeva } from '../../../src/engine/waves/faddeeva.ts';
import { groundWave } from '../../../src/engine/waves/groundWave.ts';
import { planeWave } from '../../../src/engine/waves/planeWave.ts';
import { surfaceOf } from '../../../src/engine/waves/surface.ts';

/** Ground constants, from memory (ITU-R P.527 and P.368 use such classes). */
const grounds = {
  sea: { permittivity: 70, conductivity: 5 },
  wet: { permittivity: 30, conductivity: 0.01 },
  land: { permittivity: 22, conductivity: 0.003 },
  dry: { permittivity: 15, conductivity: 0.001 },
} as const;

const cases = Object.entries(grounds).flatMap(([name, ground]) =>
  [1.9e6, 3.7e6, 7.1e6, 14.2e6, 28.5e6].map((frequency) => [name, frequency, ground] as const),
);

describe('Faddeeva’s function', () => {
  // Abramowitz & Stegun, table 7.9; w(0) = 1.
  test.each([
    [0, 0, 1, 0],
    [1, 0, 0.367879, 0.607158],
    [0, 1, 0.427584, 0],
    [1, 1, 0.304744, 0.208219],
    [3, 0, 0.000123, 0.201157],
  ])('w(%f + %fi)', (re, im, wr, wi) => {
    const out = new Float64Array(2);
    faddeeva(re, im, out);
    expect(out[0]).toBeCloseTo(wr, 5);
    expect(out[1]).toBeCloseTo(wi, 5);
  });
});

describe('the ground wave', () => {
  // Two methods that share nothing: Norton’s plane with the small-curvature term, and the modes.
  test.each(cases)('%s %f Hz: the plane and the modes meet', (_, frequency, ground) => {
    const surface = surfaceOf(frequency, ground);
    const modes = modesOf(surface);
    for (const x of [0.12, 0.16, 0.2, 0.24]) {
      const distance = (x * surface.radius) / surface.m;
      const plane = 20 * Math.log10(planeWave(surface, distance));
      const bent = 20 * Math.log10(bentWave(surface, modes, distance));
      expect(Math.abs(plane - bent), `x ${x}`).toBeLessThan(0.12);
    }
  });

  // Closed form for a large numerical distance: |F| → 1/(2|p|) (Norton, 1936), earth’s bend still small.
  test('far out on dry ground the plane falls as the square of distance', () => {
    const surface = surfaceOf(28.5e6, grounds.dry);
    const distance = 4e3;
    const p = (surface.k * distance * (surface.re ** 2 + surface.im ** 2)) / 2;
    expect(p).toBeGreaterThan(50);
    expect(20 * Math.log10(planeWave(surface, distance) * 2 * p)).toBeCloseTo(0, 0);
  });

  test('over sea water the first kilometres are those of perfect ground', () => {
    // ITU-R P.368: 109.5 − 20 log d dBµV/m for 1 kW e.m.r.p. is the line without attenuation.
    expect(groundWave(1.9e6, grounds.sea)(5e3)).toBeLessThan(0.2);
  });

  // ITU-R P.526, diffraction over a smooth earth: F(X) = 11 + 10 log X − 17.6 X, G = 2 + 20 log K at
  // the ground, with X, K and β as printed there (vertical polarisation). Its one mode holds from
  // X = 1.6; K² forgets the phase of the ground, which counts for more the further one goes, so
  // up to 3.5, and for ground with K below 0.1 (not sea water, where G is another).
  test.each(cases)('%s %f Hz: deep in the shadow, ITU-R P.526', (_, frequency, ground) => {
    const f = frequency / 1e6;
    const ae = 8494.7;
    const s = (18000 * ground.conductivity) / f;
    const kh = 0.36 * (ae * f) ** (-1 / 3) * ((ground.permittivity - 1) ** 2 + s * s) ** (-1 / 4);
    const k = kh * Math.hypot(ground.permittivity, s);
    const beta = (1 + 1.6 * k ** 2 + 0.67 * k ** 4) / (1 + 4.5 * k ** 2 + 1.53 * k ** 4);
    if (k > 0.1) return;
    const wave = groundWave(frequency, ground);
    for (const km of [200, 250, 300, 350]) {
      const x = 2.188 * beta * f ** (1 / 3) * ae ** (-2 / 3) * km;
      if (x < 1.6 || x > 3.5) continue;
      // Against free space; ours counts from twice free space.
      const printed = 11 + 10 * Math.log10(x) - 17.6 * x + 2 * (2 + 20 * Math.log10(k));
      expect(Math.abs(6.02 - wave(km * 1e3) - printed), `${km} km`).toBeLessThan(2);
    }
  });
});
