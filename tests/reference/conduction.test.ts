import { expect, test } from 'vitest';
import {
  conductionAngle,
  cosinePulse,
  pulseEfficiency,
  standingRatio,
} from '../../src/engine/circuit/conduction.ts';

const degrees = (d: number) => (d * Math.PI) / 180;

// Closed form, to the digits of the printed table; efficiency in per cent.
const table = [
  { angle: 360, i: [0.5, 0.5, 0, 0], eta: 50 },
  { angle: 270, i: [0.4425, 0.5326, 0.0439, -0.0311], eta: 60.18 },
  { angle: 180, i: [0.3183, 0.5, 0.2122, 0], eta: 78.54 },
  { angle: 120, i: [0.218, 0.391, 0.2757, 0.1378], eta: 89.68 },
  { angle: 90, i: [0.1649, 0.3102, 0.2562, 0.1811], eta: 94.04 },
];

test.each(table)('a pulse of $angle degrees has the tabulated harmonics', ({ angle, i, eta }) => {
  i.forEach((printed, n) => {
    expect(Math.abs(cosinePulse(degrees(angle), n) - printed)).toBeLessThanOrEqual(0.5001e-4);
  });
  expect(Math.abs(100 * pulseEfficiency(degrees(angle)) - eta)).toBeLessThanOrEqual(0.5001e-2);
});

// Source: the definition of the Fourier coefficient, by the rectangle rule on the waveform itself.
test.each([40, 75, 120, 180, 200, 270, 330, 360])(
  'orders 0 to 10 at %d degrees are the Fourier integral of the waveform',
  (angle) => {
    const h = degrees(angle) / 2;
    const points = 400_000;
    for (let n = 0; n <= 10; n += 1) {
      let sum = 0;
      for (let k = 0; k < points; k += 1) {
        const phi = -Math.PI + (2 * Math.PI * (k + 0.5)) / points;
        if (Math.abs(phi) < h) {
          sum += ((Math.cos(phi) - Math.cos(h)) / (1 - Math.cos(h))) * Math.cos(n * phi);
        }
      }
      const mean = (sum / points) * (n === 0 ? 1 : 2);
      expect(Math.abs(cosinePulse(2 * h, n) - mean)).toBeLessThan(1e-9);
    }
  },
);

// Source: closed form. Half a sine has Imax/π, Imax/2; half a sine's harmonics 2/(π(n² − 1)).
test('half a sine: even harmonics alternate, odd ones vanish', () => {
  expect(cosinePulse(Math.PI, 0)).toBeCloseTo(1 / Math.PI, 14);
  for (const n of [2, 4, 6, 8, 10]) {
    const sign = n % 4 === 2 ? 1 : -1;
    expect(cosinePulse(Math.PI, n)).toBeCloseTo((sign * 2) / (Math.PI * (n * n - 1)), 14);
  }
  for (const n of [3, 5, 7, 9]) expect(cosinePulse(Math.PI, n)).toBeCloseTo(0, 14);
});

// Source: i = Iq + A cos φ by definition; Imax = Iq + A, cos h = −Iq/A.
test('the standing current gives back the angle', () => {
  for (const angle of [181, 200, 240, 270, 300, 330, 359].map(degrees)) {
    const a = 1;
    const iq = -a * Math.cos(angle / 2);
    const fundamental = (iq + a) * cosinePulse(angle, 1);
    expect(standingRatio(angle)).toBeCloseTo(iq / fundamental, 12);
    expect(conductionAngle(iq / fundamental)).toBeCloseTo(angle, 9);
  }
  expect(conductionAngle(0)).toBeCloseTo(Math.PI, 14);
  expect(conductionAngle(1)).toBe(2 * Math.PI);
  expect(conductionAngle(3)).toBe(2 * Math.PI);
});
