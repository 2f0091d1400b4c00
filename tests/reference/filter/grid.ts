import type { Family } from '../../../src/engine/circuit/couplings.ts';

/** One filter to be made. */
export interface GridCase {
  readonly fs: number;
  readonly cm: number;
  readonly c0: number;
  readonly n: number;
  readonly family: Family;
  readonly ripple: number;
  readonly qu: number;
  readonly width: number;
}

const families = [
  ['butterworth', 0],
  ['chebyshev', 0.01],
  ['chebyshev', 0.1],
  ['chebyshev', 0.5],
  ['chebyshev', 1],
  ['equal', 0],
] as const;

/**
 * 1215 filters over all crystals that are to be had: five frequencies, three motional and three
 * holder capacitances, two to ten poles, three Qs; families and widths go round at steps of their
 * own, so that every pairing comes up.
 */
export function grid(): GridCase[] {
  const all: GridCase[] = [];
  for (const fs of [1.8e6, 3.6864e6, 7.2e6, 14.318e6, 21e6]) {
    for (const cm of [8e-15, 15e-15, 28e-15]) {
      for (const c0 of [2e-12, 4e-12, 7e-12]) {
        for (const n of [2, 3, 4, 5, 6, 7, 8, 9, 10]) {
          for (const qu of [20e3, 70e3, 200e3]) {
            const [family, ripple] = families[all.length % 6] ?? ['butterworth', 0];
            const width = [500, 1800, 2400, 2700, 3000][all.length % 5] ?? 0;
            all.push({ fs, cm, c0, n, family, ripple, qu, width });
          }
        }
      }
    }
  }
  return all;
}
