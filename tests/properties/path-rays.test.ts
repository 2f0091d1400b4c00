import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { grounds } from '../../src/engine/data/grounds.ts';
import { hop, hopReach } from '../../src/engine/stages/path/hop.ts';
import { lineRay } from '../../src/engine/stages/path/lineRay.ts';
import { skipDistance } from '../../src/engine/stages/path/skipDistance.ts';
import { type Sky, skyRay } from '../../src/engine/stages/path/skyRay.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const skies: fc.Arbitrary<Sky> = fc.record({
  frequency: between(1.8e6, 30e6),
  height: between(100e3, 500e3),
  critical: between(1e6, 15e6),
  lowest: between(0, 0.5),
  index: between(0, 2),
  gyro: between(0.7e6, 1.6e6),
});

describe('rays by way of the layer', () => {
  test('elevation and distance of a hop are each other’s inverse', () => {
    fc.assert(
      fc.property(between(1e3, 3e6), between(250e3, 500e3), (distance, height) => {
        const { elevation } = hop(distance, height);
        expect(Math.abs(hopReach(elevation, height) - distance)).toBeLessThan(1e-2);
      }),
    );
  });

  test('the fewest hops never leave below the lowest useful elevation, and fewer would', () => {
    fc.assert(
      fc.property(skies, between(1e3, 15e6), (sky, distance) => {
        const ray = skyRay(distance, null, sky);
        expect(ray.elevation).toBeGreaterThanOrEqual(sky.lowest - 1e-6);
        if (ray.hops > 1) {
          const fewer = skyRay(distance, ray.hops - 1, sky);
          expect(fewer.elevation).toBeLessThan(sky.lowest + 1e-6);
        }
      }),
    );
  });

  test('one hop is open from the skip distance on, and closed nearer', () => {
    fc.assert(
      fc.property(skies, between(0.01, 0.999), (sky, part) => {
        const skip = skipDistance(sky.frequency, sky.critical, sky.height);
        const longest = hopReach(0, sky.height);
        const distance = part * longest;
        const { open } = skyRay(distance, 1, sky);
        if (skip === null || distance < skip * (1 - 1e-9)) expect(open).toBe(false);
        else if (distance > skip * (1 + 1e-9)) expect(open).toBe(true);
      }),
    );
  });

  test('a stronger sun and a lower frequency never lose less', () => {
    fc.assert(
      fc.property(skies, between(50e3, 3e6), (sky, distance) => {
        const ray = skyRay(distance, null, sky);
        const sunny = skyRay(distance, null, { ...sky, index: sky.index + 0.5 });
        const lower = skyRay(distance, null, { ...sky, frequency: sky.frequency * 0.9 });
        expect(sunny.loss).toBeGreaterThan(ray.loss);
        expect(lower.absorption).toBeGreaterThanOrEqual(ray.absorption);
      }),
    );
  });
});

test('the ground ray adds at most 6 dB on flat ground', () => {
  fc.assert(
    fc.property(
      between(100, 50e3),
      between(0.5, 200),
      between(0.5, 200),
      between(1.8e6, 30e6),
      fc.constantFrom('sea', 'wet', 'average', 'dry') as fc.Arbitrary<keyof typeof grounds>,
      fc.constantFrom('horizontal' as const, 'vertical' as const),
      (distance, height, farHeight, frequency, ground, polarisation) => {
        const sight = { frequency, height, farHeight, ground: grounds[ground], polarisation };
        const ray = lineRay(distance, sight);
        expect(ray.groundRay).toBeLessThanOrEqual(20 * Math.log10(2) + 1e-9);
        expect(Number.isFinite(ray.loss)).toBe(true);
      },
    ),
  );
});
