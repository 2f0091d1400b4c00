import { expect, test } from 'vitest';
import { friis } from '../../src/engine/circuit/friis.ts';
import {
  externalNoise,
  type NoiseClassKey,
  noiseFromOutside,
} from '../../src/engine/data/noiseClasses.ts';

const ratio = (db: number) => 10 ** (db / 10);
const db = (x: number) => 10 * Math.log10(x);

// Source: ITU-R P.372, c and d as seen second-hand; figures at 7.1 MHz computed from them.
const at7: readonly [NoiseClassKey, number][] = [
  ['city', 53.22],
  ['residential', 48.92],
  ['rural', 43.62],
  ['quietRural', 29.25],
  ['galactic', 32.42],
];
test.each(at7)('%s noise at 7.1 MHz is %d dB over kT0B', (place, fam) => {
  expect(Math.abs(externalNoise(place, 7.1e6) - fam)).toBeLessThanOrEqual(0.00501);
});

// Source: the same Recommendation; a table worked from it, to 0.1 dB and whole dBm in 2.4 kHz.
const worked: readonly [NoiseClassKey, number, number, number][] = [
  ['residential', 3.7e6, 56.8, -83],
  ['residential', 7.1e6, 48.9, -91],
  ['residential', 14.2e6, 40.6, -100],
  ['residential', 21.2e6, 35.8, -104],
  ['rural', 3.7e6, 51.5, -89],
  ['rural', 7.1e6, 43.6, -97],
  ['rural', 14.2e6, 35.3, -105],
  ['rural', 21.2e6, 30.5, -110],
  ['quietRural', 3.7e6, 37.3, -103],
  ['quietRural', 7.1e6, 29.3, -111],
  ['quietRural', 14.2e6, 20.6, -120],
  ['quietRural', 21.2e6, 15.7, -125],
];
test.each(worked)('%s at %d Hz: %d dB, %d dBm in 2.4 kHz', (place, frequency, fam, dbm) => {
  const external = externalNoise(place, frequency);
  expect(Math.abs(external - fam)).toBeLessThanOrEqual(0.051);
  const level = external + db((1.380649e-23 * 290 * 2400) / 1e-3);
  expect(Math.abs(level - dbm)).toBeLessThanOrEqual(0.5);
});

// Source: the same c and d, powers added by hand: at 14.2 MHz the galaxy has 52 − 23·lg 14.2 =
// 25.50 dB; a quiet place with 20.63 dB comes to 26.73, a street with 40.58 to 40.72. Below the
// critical frequency none of it comes through: at 7.1 MHz nothing is added.
test.each([
  ['quietRural', 14.2e6, 26.73],
  ['residential', 14.2e6, 40.72],
  ['quietRural', 7.1e6, 29.25],
  ['galactic', 14.2e6, 25.5],
] as const)('%s with the galaxy at %d Hz: %d dB', (place, frequency, fa) => {
  expect(Math.abs(noiseFromOutside(place, null, frequency) - fa)).toBeLessThanOrEqual(0.0101);
});

// Source: Boltzmann's constant is exact in the SI; kT0 = −173.975 dBm/Hz, −139.204 dBm in 3 kHz.
test('thermal noise at 290 K', () => {
  const kt0 = 1.380649e-23 * 290;
  expect(db(kt0 / 1e-3)).toBeCloseTo(-173.975, 3);
  expect(db((kt0 * 3000) / 1e-3)).toBeCloseTo(-139.204, 3);
});

// Source: Pozar, Microwave Engineering, 3rd ed., example 10.2 (from memory): amplifier G 10 dB,
// F 2 dB; filter loss 1 dB; mixer loss 3 dB, F 4 dB: F = 1.80, 2.55 dB.
test('a textbook front end', () => {
  const chain = friis([
    { gain: ratio(10), noiseFactor: ratio(2) },
    { gain: ratio(-1), noiseFactor: ratio(1) },
    { gain: ratio(-3), noiseFactor: ratio(4) },
  ]);
  expect(Math.abs(chain.noiseFactor - 1.8)).toBeLessThanOrEqual(0.0051);
  // The printed 2.55 dB is that of the rounded 1.80.
  expect(Math.abs(db(Number(chain.noiseFactor.toFixed(2))) - 2.55)).toBeLessThanOrEqual(0.005);
  expect(db(chain.gain)).toBeCloseTo(6, 12);
});

// Source: closed form. A passive block at 290 K in front adds its loss to the noise figure.
test('loss in front adds decibel for decibel', () => {
  for (const loss of [0.1, 1, 3, 10]) {
    const { noiseFactor } = friis([
      { gain: ratio(-loss), noiseFactor: ratio(loss) },
      { gain: ratio(20), noiseFactor: ratio(7) },
    ]);
    expect(db(noiseFactor)).toBeCloseTo(loss + 7, 12);
  }
});

test('the shares and one make up the whole', () => {
  const chain = friis([
    { gain: 0.5, noiseFactor: 2 },
    { gain: 40, noiseFactor: 1.7 },
    { gain: 0.6, noiseFactor: 1 / 0.6 },
    { gain: 40, noiseFactor: 1.7, bothSides: true },
  ]);
  const sum = chain.added.reduce((a, b) => a + b, 1);
  expect(sum).toBeCloseTo(chain.noiseFactor, 14);
  expect(chain.added[3]).toBeCloseTo((2 * 0.7) / (0.5 * 40 * 0.6), 14);
});
