import { abs, add, type Complex, complex, divide, exp, multiply, sqrt, subtract } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { grounds } from '../../../src/engine/data/grounds.ts';
import { twoRayGain } from '../../../src/engine/stages/path/twoRay.ts';
import { freeSpaceLoss, SPEED_OF_LIGHT } from '../../../src/engine/waves/freeSpaceLoss.ts';
import { reflection } from '../../../src/engine/waves/reflection.ts';

// Fresnel's equations worked a second way, in complex numbers: the permittivity is ε + σ/(jωε0)
function fresnel(grazing: number, f: number, sigma: number, er: number, vertical: boolean) {
  const eps = complex(er, -sigma / (2 * Math.PI * f * 8.8541878128e-12));
  const root = sqrt(subtract(eps, Math.cos(grazing) ** 2) as Complex) as Complex;
  const scaled = vertical ? multiply(eps, Math.sin(grazing)) : complex(Math.sin(grazing), 0);
  return divide(subtract(scaled, root), add(scaled, root)) as Complex;
}

describe("ground reflection, Fresnel's equations", () => {
  for (const [name, ground] of Object.entries(grounds)) {
    for (const polarisation of ['horizontal', 'vertical'] as const) {
      test(`${name} ${polarisation}`, () => {
        for (const grazing of [0.001, 0.05, 0.3, 0.9, 1.5]) {
          for (const f of [1.8e6, 7e6, 28e6]) {
            const ours = reflection(grazing, f, ground, polarisation);
            const theirs = fresnel(
              grazing,
              f,
              ground.conductivity,
              ground.permittivity,
              polarisation === 'vertical',
            );
            expect(ours.size * Math.cos(ours.turn)).toBeCloseTo(theirs.re, 8);
            expect(ours.size * Math.sin(ours.turn)).toBeCloseTo(theirs.im, 8);
          }
        }
      });
    }
  }

  test('grazing: every ground turns the wave over, coefficient −1 (closed form)', () => {
    const mirror = reflection(1e-7, 14e6, grounds.average, 'horizontal');
    expect(mirror.size).toBeCloseTo(1, 6);
    expect(mirror.turn).toBeCloseTo(Math.PI, 6);
  });
});

describe('two-ray model', () => {
  const f = 14e6;
  // Far away with a perfect −1 the loss is the plane-earth loss 40 log d − 20 log h1 − 20 log h2,
  // without a wavelength in it (textbook closed form)
  test.each([5e3, 20e3])('plane-earth loss at %d m', (d) => {
    const gain = twoRayGain(d, 10, 10, f, { size: 1, turn: Math.PI });
    const loss = freeSpaceLoss(f, d) - gain;
    expect(Math.abs(loss - (40 * Math.log10(d) - 40))).toBeLessThan(0.01);
  });

  test('in step and of like strength: 6.02 dB', () => {
    // half a wave more and a reflection that turns it over
    const half = SPEED_OF_LIGHT / f / 2;
    const d = 1e5;
    const h = Math.sqrt(((d + half) ** 2 - d * d) / 4);
    expect(twoRayGain(d, h, h, f, { size: 1, turn: Math.PI })).toBeCloseTo(6.0206, 3);
  });

  test('adds two phasors, worked in complex numbers', () => {
    const mirror = { size: Math.hypot(0.7, 0.2), turn: Math.atan2(0.2, -0.7) };
    const direct = Math.hypot(1000, 12 - 30);
    const bounced = Math.hypot(1000, 42);
    const k = (2 * Math.PI * f) / SPEED_OF_LIGHT;
    const sum = add(
      divide(exp(complex(0, -k * direct)), direct),
      divide(multiply(complex(-0.7, 0.2), exp(complex(0, -k * bounced))), bounced),
    ) as Complex;
    const expected = 20 * Math.log10(Number(abs(sum)) * direct);
    expect(twoRayGain(1000, 12, 30, f, mirror)).toBeCloseTo(expected, 7);
  });
});
