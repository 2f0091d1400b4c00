import { describe, expect, test } from 'vitest';
import { workPath } from '../../../src/engine/stages/path/work.ts';
import { linkSeen as base } from './linkSeen.ts';

const within = (value: number | null, wanted: number, by: number) => {
  expect(value).not.toBeNull();
  expect(Math.abs((value ?? Number.NaN) - wanted)).toBeLessThanOrEqual(by);
};

describe('a link budget worked by hand', () => {
  // P.525 with 32.4478: 32.4478 + 17.0252 + 26.0206 = 75.4936 dB; 5 W is 36.9897 dBm
  test('5 W over 20 km in sight', () => {
    const { results } = workPath(base);
    within(results.loss, 75.4936, 2e-4);
    within(results.received, 36.9897 - 75.4936, 3e-4);
    // field by P.525: 6.9897 + 74.8 − 26.0206, the constant printed to 0.1 dB
    within(results.field, 55.77, 0.06);
    // −91 and −125 dBm together: 10 log(1 + 10^−3.4) = 0.0017 dB more
    within(results.noise, -90.9983, 1e-4);
    within(results.density, 36.9897 - 75.4936 + 90.9983 + 33.8021, 5e-4);
    expect(results.speech).toBe('good');
  });

  // Received level by the antenna's area: P = E²/(120π) · λ²/4π, E as worked (closed form;
  // 30 Ω for 29.98 is 0.003 dB)
  test('field strength and received level agree', () => {
    const { results } = workPath({ ...base, route: 'twoRay', distance: 12e3 });
    const e = 10 ** ((results.field ?? 0) / 20) * 1e-6;
    const lambda = 299_792_458 / base.frequency;
    const watts = ((e * e) / (120 * Math.PI)) * (lambda ** 2 / (4 * Math.PI));
    within(results.received, 10 * Math.log10(watts / 1e-3), 0.01);
  });

  // A source's example: 100 W received S8 is a path of 129 dB (50 − −79); 5 W then is S6
  test('thirteen decibels less are two S-units', () => {
    const strong = workPath({ ...base, power: 100 });
    const weak = workPath({ ...base, power: 5 });
    within(strong.results.received, (weak.results.received ?? 0) + 13.01, 0.005);
  });

  // By hand from the closed forms of check: 1000 km by 300 km, sec i 1.855, slant 1186.0 km;
  // free space over 1186.0 km at 7.1 MHz: 32.4478 + 17.0252 + 61.4817 = 110.955 dB
  test('one hop over 1000 km at night', () => {
    const { results } = workPath({
      ...base,
      route: 'skyWave',
      distance: 1000e3,
      hour: 0,
      foF2: 5e6,
    });
    expect(results.hopCount).toBe(1);
    within(results.absorption, 0, 0);
    within(results.groundLoss, 0, 0);
    within(results.muf, 5e6 * 1.855, 5e6 * 0.0006);
    within(results.loss, 110.955, 0.002);
    expect(results.opening).toBe('holds');
  });

  test('two hops touch the ground once: 2 dB, ITU-R P.533 (second-hand)', () => {
    const { results } = workPath({ ...base, route: 'skyWave', distance: 5000e3, foF2: 9e6 });
    expect(results.hopCount).toBe(2);
    within(results.groundLoss, 2, 0);
  });
});

describe('what cannot be is said', () => {
  test('too high for the layer: no figures, and how far the skip reaches', () => {
    const { results, problems } = workPath({
      ...base,
      frequency: 14.2e6,
      route: 'skyWave',
      distance: 300e3,
      foF2: 6e6,
    });
    expect(results.received).toBeNull();
    expect(results.opening).toBe('fails');
    expect(results.skip).toBeGreaterThan(300e3);
    expect(problems.some((p) => p.field === 'path.distance' && p.weight === 'stops')).toBe(true);
  });

  test('a hop longer than the Earth allows', () => {
    const { results, problems } = workPath({
      ...base,
      route: 'skyWave',
      distance: 6000e3,
      hops: 1,
      foF2: 12e6,
    });
    expect(results.received).toBeNull();
    expect(problems.some((p) => p.field === 'path.hops')).toBe(true);
  });

  test('beyond the horizon in line of sight', () => {
    const { results, problems } = workPath({ ...base, distance: 40e3 });
    expect(results.received).toBeNull();
    expect(results.horizon).toBeGreaterThan(25e3);
    expect(problems.some((p) => p.field === 'path.distance')).toBe(true);
  });

  test('no noise figures yet: the S-report stands, signal over noise waits', () => {
    const { results, problems } = workPath({
      ...base,
      external: null,
      bandNoise: null,
      floor: null,
      place: null,
    });
    expect(results.report).toMatch(/^S9/);
    expect(results.snr).toBeNull();
    expect(problems.some((p) => p.field === 'receive.floor')).toBe(true);
  });
});
