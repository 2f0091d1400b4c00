import { bench, describe } from 'vitest';
import { crystalOf } from '../../src/engine/circuit/crystal.ts';
import { crystalFit } from '../../src/engine/circuit/crystalFit.ts';
import { across, noisy, simulatedSweep } from '../reference/sweep/simulatedSweep.ts';

const crystal = crystalOf(9e6, 14e-3, 100e3, 3.5e-12);
const sweep = async (points: number) =>
  noisy(await simulatedSweep(crystal, 12.5, across(crystal, 0.3, 1.3, points)), 0.05, 1);
const [small, usual, coarse] = [await sweep(201), await sweep(401), await sweep(61)];
const given = {
  rt: 12.5,
  c0: 4e-12,
  c0Spread: 1.5e-12,
  c0From: 'fit',
  shunt: 0,
  freeShunt: false,
  freeLevel: false,
} as const;

// To be shown: 8 ms at most for 401 points.
describe('fitting a crystal to a sweep', () => {
  bench('401 points, level', () => {
    crystalFit({ ...given, ...usual, phase: null });
  });
  bench('401 points, level and phase', () => {
    crystalFit({ ...given, ...usual });
  });
  bench('201 points, level', () => {
    crystalFit({ ...given, ...small, phase: null });
  });
  bench('61 points, coarse', () => {
    crystalFit({ ...given, ...coarse, phase: null });
  });
});
