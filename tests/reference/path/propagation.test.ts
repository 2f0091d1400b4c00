import { describe, expect, test } from 'vitest';
import { absorption, absorptionIndex } from '../../../src/engine/stages/path/absorption.ts';
import { exposureDistance, exposureLimits } from '../../../src/engine/stages/path/exposure.ts';
import { fieldStrength } from '../../../src/engine/stages/path/fieldStrength.ts';
import { hop, hopReach, incidenceSecant } from '../../../src/engine/stages/path/hop.ts';
import { radioHorizon } from '../../../src/engine/stages/path/radioHorizon.ts';
import { skipDistance } from '../../../src/engine/stages/path/skipDistance.ts';
import { overS9, sReport, sUnits } from '../../../src/engine/stages/path/sMeter.ts';
import { requiredDensity, speechGrade } from '../../../src/engine/stages/path/speechGrade.ts';
import { declinations, sunZenith } from '../../../src/engine/stages/path/sun.ts';
import { freeSpaceLoss } from '../../../src/engine/waves/freeSpaceLoss.ts';

const degrees = (rad: number) => (rad * 180) / Math.PI;

describe('free space, ITU-R P.525', () => {
  // P.525: Lbf = 32.4 + 20 log f(MHz) + 20 log d(km) (from memory); the constant unrounded is
  // 20 log(4π·1e9/c) = 32.4478 dB (closed form)
  test.each([
    { f: 1e6, d: 1e3, loss: 32.4478, within: 5e-5 },
    { f: 10e6, d: 10e3, loss: 72.4478, within: 5e-5 },
    { f: 7e6, d: 1000e3, loss: 32.4 + 16.902 + 60, within: 0.05 },
  ])('$f Hz over $d m', ({ f, d, loss, within }) => {
    expect(Math.abs(freeSpaceLoss(f, d) - loss)).toBeLessThanOrEqual(within);
  });

  // P.525: E(dBµV/m) = Pt(dBW) − 20 log d(km) + 74.8 (from memory), printed to 0.1 dB
  test.each([
    { watts: 1, d: 1e3, level: 74.8 },
    { watts: 100, d: 1e3, level: 94.8 },
    { watts: 5, d: 20e3, level: 74.8 + 6.9897 - 26.0206 },
  ])('field of $watts W at $d m', ({ watts, d, level }) => {
    expect(Math.abs(20 * Math.log10(fieldStrength(watts, d) * 1e6) - level)).toBeLessThanOrEqual(
      0.05,
    );
  });
});

describe('one hop over a spherical Earth', () => {
  // Closed form, Earth 6371 km, printed to the last digit shown
  test.each([
    { d: 100, h: 300, elevation: 80.09, secant: 1.014, slant: 608.7 },
    { d: 500, h: 300, elevation: 48.41, secant: 1.293, slant: 788.5 },
    { d: 1000, h: 300, elevation: 28.12, secant: 1.855, slant: 1186.0 },
  ])('$d km by a layer at $h km', ({ d, h, elevation, secant, slant }) => {
    const ray = hop(d * 1e3, h * 1e3);
    expect(Math.abs(degrees(ray.elevation) - elevation)).toBeLessThanOrEqual(0.0051);
    expect(Math.abs(ray.secant - secant)).toBeLessThanOrEqual(0.00051);
    expect(Math.abs(ray.slant / 1e3 - slant)).toBeLessThanOrEqual(0.051);
  });

  // Closed form 2R·acos(R/(R+h))
  test.each([
    { h: 300, reach: 3836 },
    { h: 110, reach: 2351 },
  ])('longest hop by $h km', ({ h, reach }) => {
    expect(Math.abs(hopReach(0, h * 1e3) / 1e3 - reach)).toBeLessThanOrEqual(0.51);
  });

  test('straight up: twice the height, secant 1', () => {
    const ray = hop(0, 250e3);
    expect(degrees(ray.elevation)).toBeCloseTo(90, 9);
    expect(ray.secant).toBeCloseTo(1, 12);
    expect(ray.slant).toBeCloseTo(500e3, 6);
  });

  // Secant law by hand: the hop at the skip distance has f = foF2·sec i
  test.each([
    { f: 7.1e6, critical: 5e6, h: 300e3 },
    { f: 14.2e6, critical: 6e6, h: 350e3 },
  ])('skip of $f Hz', ({ f, critical, h }) => {
    const skip = skipDistance(f, critical, h);
    expect(skip).not.toBeNull();
    expect(critical * hop(skip ?? 0, h).secant).toBeCloseTo(f, 1);
  });

  // A flat Earth gives sec i = √(1 + (d/2h)²): within 1 % for short hops (closed form)
  test('short hops agree with a flat Earth', () => {
    const flat = Math.sqrt(1 + (200 / 600) ** 2);
    expect(Math.abs(hop(200e3, 300e3).secant / flat - 1)).toBeLessThan(0.01);
  });

  test('no skip where the layer turns it straight back, none at all where nothing does', () => {
    expect(skipDistance(3.6e6, 5e6, 300e3)).toBe(0);
    expect(skipDistance(28e6, 5e6, 300e3)).toBeNull();
  });
});

describe('absorption in the D region', () => {
  // CCIR Report 252-2 form, worked by hand: R12 50, sun 30° from the zenith, 7 MHz, fH 1.2 MHz,
  // straight up: I = 1.185·cos^1.3(26.43°) = 1.0265; 677.2·1.0265/(8.2^1.98 + 10.2) = 9.255 dB
  test('by hand', () => {
    const cosine = Math.cos((26.43 * Math.PI) / 180);
    const index = 1.185 * Math.exp(1.3 * Math.log(cosine));
    expect(absorptionIndex(50, Math.PI / 6)).toBeCloseTo(index, 12);
    const bottom = Math.exp(1.98 * Math.log(8.2)) + 10.2;
    expect(absorption(index, 1, 7e6, 1.2e6)).toBeCloseTo((677.2 * index) / bottom, 9);
  });

  test('nothing at night', () => {
    expect(absorptionIndex(100, Math.PI)).toBe(0);
    expect(absorptionIndex(0, 0)).toBe(1);
  });

  test('slant at 100 km for a flat ray is near 5.7, law of sines', () => {
    expect(incidenceSecant(0, 100e3)).toBeCloseTo(1 / Math.sqrt(1 - (6371 / 6471) ** 2), 12);
  });
});

describe('sun', () => {
  // Closed form: at noon the zenith distance is |latitude − declination|; at the equinox the sun
  // sets at 6 o'clock local time everywhere
  test.each([
    { latitude: 50, season: 'equinox', hour: 0, zenith: 50 },
    { latitude: 50, season: 'summer', hour: 0, zenith: 26.56 },
    { latitude: 50, season: 'winter', hour: 0, zenith: 73.44 },
    { latitude: 35, season: 'equinox', hour: 90, zenith: 90 },
    { latitude: 0, season: 'equinox', hour: 180, zenith: 180 },
  ] as const)('$season at latitude $latitude°, $hour° from noon', (row) => {
    const rad = Math.PI / 180;
    const zenith = sunZenith(row.latitude * rad, declinations[row.season], row.hour * rad);
    expect(degrees(zenith)).toBeCloseTo(row.zenith, 6);
  });
});

describe('S-meter, IARU Region 1 R.1', () => {
  // S9 = −73 dBm below 30 MHz, 6 dB a unit, S1 = −121 dBm; 100 W received S8 → 129 dB path, so
  // 5 W arrives at −92 dBm, S6 rounded (a worked example in the sources)
  test.each([
    { dBm: -73, units: 9, over: 0, report: 'S9' },
    { dBm: -121, units: 1, over: 0, report: 'S1' },
    { dBm: -79, units: 8, over: 0, report: 'S8' },
    { dBm: -53, units: 9, over: 20, report: 'S9+20 dB' },
    { dBm: -91, units: 6, over: 0, report: 'S6' },
    { dBm: -92, units: 35 / 6, over: 0, report: 'S6' },
    { dBm: -130, units: 0, over: 0, report: 'below S1' },
    { dBm: -72, units: 9, over: 1, report: 'S9' },
  ])('$dBm dBm', ({ dBm, units, over, report }) => {
    expect(sUnits(dBm)).toBeCloseTo(units, 9);
    expect(overS9(dBm)).toBeCloseTo(over, 9);
    expect(sReport(dBm)).toBe(report);
  });
});

describe('speech, ITU-R F.339-8 (second-hand)', () => {
  test('required densities', () => {
    expect(requiredDensity.stable).toEqual({ justUsable: 47, marginal: 56, good: 64 });
    expect(requiredDensity.fading).toEqual({ justUsable: 48, marginal: 61, good: 72 });
  });
  test.each([
    { density: 46.9, grade: 'none' },
    { density: 47, grade: 'justUsable' },
    { density: 56, grade: 'marginal' },
    { density: 64, grade: 'good' },
  ])('$density dB·Hz on a stable path', ({ density, grade }) => {
    expect(speechGrade(density, requiredDensity.stable)).toBe(grade);
  });
});

describe('exposure', () => {
  // 47 CFR 1.1310: 824/f and 1842/f V/m (read in the source); ICNIRP 2020: 300/f^0.7 (second-hand)
  test('limits', () => {
    expect(exposureLimits.public.field(10e6)).toBeCloseTo(82.4, 9);
    expect(exposureLimits.occupational.field(10e6)).toBeCloseTo(184.2, 9);
    expect(exposureLimits.occupational.field(2e6)).toBe(614);
    expect(exposureLimits.icnirp.field(10e6)).toBeCloseTo(300 / 10 ** 0.7, 9);
  });
  // E = √(30 EIRP)/R and S = EIRP/4πR² say the same: E²/377 = S (closed form, 120π ≈ 377)
  test('the field at that distance is the limit', () => {
    const r = exposureDistance(100, 50);
    expect(fieldStrength(100, r)).toBeCloseTo(50, 9);
    expect(100 / (4 * Math.PI * r * r)).toBeCloseTo(50 ** 2 / (120 * Math.PI), 9);
  });
});

test('radio horizon: 4.12(√h1 + √h2) km, the rule of the handbooks', () => {
  expect(Math.abs(radioHorizon(10, 25) / 1e3 - 4.12 * (Math.sqrt(10) + 5))).toBeLessThan(0.05);
});
