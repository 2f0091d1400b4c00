import { describe, expect, test } from 'vitest';
import { grounds } from '../../../src/engine/data/grounds.ts';
import {
  type Antenna,
  antennaGain,
  dipoleResistance,
  shortResistance,
} from '../../../src/engine/waves/antennaGain.ts';
import { mutualImpedance } from '../../../src/engine/waves/dipoleImpedance.ts';
import { sineIntegral } from '../../../src/engine/waves/sineIntegral.ts';

const perfect = { conductivity: 1e9, permittivity: 1 };
const f = 7.1e6;
const wave = 299792458 / f;
const degrees = Math.PI / 180;

// Abramowitz & Stegun, tables 5.1 and 5.3; x = 20, 40 from memory of the same functions’ values.
test.each([
  [0.5, 0.4931074, -0.1777841],
  [1, 0.9460831, 0.3374039],
  [2, 1.605413, 0.4229808],
  [5, 1.5499312, -0.1900297],
  [10, 1.6583476, -0.0454564],
  [20, 1.5482417, 0.0444198],
])('Si and Ci at %f', (x, si, ci) => {
  const out = new Float64Array(2);
  sineIntegral(x, out);
  expect(out[0]).toBeCloseTo(si, 6);
  expect(out[1]).toBeCloseTo(ci, 6);
});

test('series and expansion of Si and Ci meet', () => {
  const near = new Float64Array(2);
  const far = new Float64Array(2);
  sineIntegral(17.9999999, near);
  sineIntegral(18.0000001, far);
  expect(near[0]).toBeCloseTo(far[0] ?? 0, 7);
  expect(near[1]).toBeCloseTo(far[1] ?? 0, 7);
});

describe('dipoles', () => {
  // Mutual impedance side by side: −12.5 − j29.9 Ω at half a wavelength, 4.0 + j17.7 at one
  // (Kraus, Antennas; Balanis, fig. 8.20), and the dipole's own as they close up:
  // 73.13 + j42.54 with 120π Ω for free space, 73.08 + j42.52 with 376.73 Ω.
  test.each([
    [0.5, -12.53, -29.93],
    [1, 4.0, 17.7],
    [1e-4, 73.08, 42.52],
  ])('mutual impedance at %f wavelengths', (apart, r, x) => {
    const z = mutualImpedance(apart);
    expect(z.r).toBeCloseTo(r, 1);
    expect(z.x).toBeCloseTo(x, 1);
  });

  test('over perfect ground: feed resistance with height', () => {
    // R = 73.1 − R21(2h): λ/4 up 85.7 Ω, λ/2 up 69.1 Ω (Kraus).
    expect(dipoleResistance(wave / 4, f, perfect)).toBeCloseTo(73.08 + 12.53, 1);
    expect(dipoleResistance(wave / 2, f, perfect)).toBeCloseTo(73.08 - 4.0, 1);
  });

  test('over perfect ground: 7.5 dBi straight up at a quarter wave', () => {
    const antenna: Antenna = { kind: 'horizontal', height: wave / 4, off: 0, efficiency: 1 };
    // 2.15 + 6.02 − 10 log(85.66/73.13) = 7.48 dBi, closed form.
    expect(antennaGain(antenna, 90 * degrees, f, perfect)).toBeCloseTo(7.48, 1);
    // Half a wave up, the lobe stands at 30°: 2.15 + 6.02 + 0.24.
    const higher: Antenna = { ...antenna, height: wave / 2 };
    expect(antennaGain(higher, 30 * degrees, f, perfect)).toBeCloseTo(8.42, 1);
    expect(antennaGain(higher, 90 * degrees, f, perfect)).toBeLessThan(-20);
  });

  test('off its ends a dipole is weak, at low angles', () => {
    const antenna: Antenna = { kind: 'horizontal', height: 10, off: 90 * degrees, efficiency: 1 };
    const ahead = antennaGain({ ...antenna, off: 0 }, 20 * degrees, f, grounds.average);
    expect(antennaGain(antenna, 20 * degrees, f, grounds.average)).toBeLessThan(ahead - 8);
    expect(antennaGain(antenna, 89.9 * degrees, f, grounds.average)).toBeCloseTo(
      antennaGain({ ...antenna, off: 0 }, 89.9 * degrees, f, grounds.average),
      2,
    );
  });
});

describe('verticals', () => {
  test('over perfect ground: 5.15 dBi and 4.77 dBi along the ground', () => {
    const at = 0.01 * degrees;
    expect(antennaGain({ kind: 'quarter', efficiency: 1 }, at, f, perfect)).toBeCloseTo(5.16, 1);
    expect(antennaGain({ kind: 'short', efficiency: 1 }, at, f, perfect)).toBeCloseTo(4.77, 1);
  });

  // ARRL Antenna Book and others show some 0 dBi at 25° over average ground for a λ/4 vertical.
  test('over average ground: about 0 dBi between 20° and 30° (handbooks, from memory)', () => {
    const gain = antennaGain({ kind: 'quarter', efficiency: 1 }, 25 * degrees, f, grounds.average);
    expect(gain).toBeGreaterThan(-1.5);
    expect(gain).toBeLessThan(1);
  });

  test('a 2.5 m whip on 80 m has half an ohm: 395(l/λ)²', () => {
    const at = 3.7e6;
    expect(shortResistance(2.5, at)).toBeCloseTo(395 * (2.5 / (299792458 / at)) ** 2, 2);
  });
});

// Energy: over perfect ground all that is fed goes up: the mean gain over the sphere is one.
test.each([0.2, 0.35, 0.5, 0.8])('a dipole %f wavelengths up radiates what it is fed', (h) => {
  let sum = 0;
  const steps = 90;
  for (let i = 0; i < steps; i += 1) {
    const elevation = ((i + 0.5) / steps) * (Math.PI / 2);
    for (let j = 0; j < steps; j += 1) {
      const off = ((j + 0.5) / steps) * (Math.PI / 2);
      const antenna: Antenna = { kind: 'horizontal', height: h * wave, off, efficiency: 1 };
      sum += 10 ** (antennaGain(antenna, elevation, f, perfect) / 10) * Math.cos(elevation);
    }
  }
  const mean = (sum / (steps * steps)) * (Math.PI / 2) * 0.5;
  expect(mean).toBeCloseTo(1, 2);
});
