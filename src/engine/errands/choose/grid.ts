import { crystalReactance, frequencyAtReactance } from '../../circuit/crystal.ts';
import { passband } from '../../circuit/passband.ts';
import { meshesOf } from './meshes.ts';
import type { Task } from './task.ts';

/** Where a filter of alike crystals is looked at. */
export interface Grid {
  /** From the mean of the meshes, Hz, rising, dense towards the edges. */
  readonly offsets: Float64Array;
  /** Width of the filter with alike crystals, between its outermost −3 dB points, Hz. */
  readonly width: number;
}

/** How far beyond the −3 dB points of the alike crystals the dense part goes, in half widths. */
const BEYOND = 1.12;

/**
 * Frequencies at which arrangements are judged: where the same filter of alike crystals has its
 * passband and some way beyond, spaced by the crystal's reactance.
 *
 * @param points between the edges
 */
export function gridOf(task: Task, points: number): Grid {
  const { alike } = task;
  const n = task.design.lm.length;
  const { frequency } = meshesOf({ ...task, crystals: [alike] });
  const middle =
    task.aligning === 'each'
      ? frequency.reduce((a, b) => (task.design.form === 'shunt' ? Math.min(a, b) : Math.max(a, b)))
      : frequency.reduce((sum, one) => sum + one, 0) / n;
  const band = passband(task.design, around(task.low, task.high, n), 1e-3);
  const width = band.high - band.low;
  const [low, high] = [crystalReactance(alike, band.low), crystalReactance(alike, band.high)];
  const offsets: number[] = [];
  for (let i = 0; i <= points; i += 1) {
    const t = -BEYOND * Math.cos((Math.PI * i) / points);
    const x = (low + high) / 2 + (t * (high - low)) / 2;
    offsets.push(frequencyAtReactance(alike, x) - middle);
  }
  const steps = Math.ceil(points / 18);
  const [first = 0, last = 0] = [offsets[0], offsets.at(-1)];
  for (let k = 1; k <= steps; k += 1) {
    offsets.unshift(first - (k / steps) ** 1.5 * 0.2 * width);
    offsets.push(last + (k / steps) ** 1.5 * 0.2 * width);
  }
  return { offsets: Float64Array.from(offsets), width };
}

/** Frequencies to look for humps and edges of n crystals at, Hz: dense towards the edges. */
export function around(low: number, high: number, n: number, margin = 0.6): number[] {
  const inner = 8 * n + 8;
  const half = (high - low) / 2;
  const at: number[] = [];
  for (let i = 0; i <= inner; i += 1) {
    at.push((low + high) / 2 - 1.1 * half * Math.cos((Math.PI * i) / inner));
  }
  for (let k = 1; k <= 16; k += 1) {
    at.unshift(low - half * (0.1 + (margin * 2 * k) / 16));
    at.push(high + half * (0.1 + (margin * 2 * k) / 16));
  }
  return at;
}
