import { crystalSweepAt, NEPER, SWEEP_POINT } from './crystalSweep.ts';
import { descend, type SweepState } from './sweepDescent.ts';
import type { SweepRows } from './sweepRows.ts';

/** Rows that are further off than so many standard deviations of the rest are trusted less. */
const OUTLYING = 6;

/** Floors that are tried, dB below the level at which they double the scatter's square. */
const FLOORS = [-30, -35, -40, -45, -50, -55, -60, -65, -70, -75, -80, -85, -90, -95, -100];

/** Floor to find the way with, before the rows have told their own; against the highest row. */
const FIRST_FLOOR = 1e-4;

/** Weights to begin with: what lies deep in the dip may be all noise, in its phase above all. */
export function firstWeights(level: Float64Array): Float64Array {
  const top = level.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  return level.map((x) => 1 / (1 + FIRST_FLOOR * 10 ** ((top - x) / 10)));
}

/** So much must the logarithm of the likelihood gain before a floor is believed. */
const BELIEVED = 5;

/**
 * Weighs the rows by how far they scatter, and goes on from there until that changes little:
 * rows near the receiver’s noise floor by their level, and rows far off the rest by their distance.
 *
 * Scatter of a level in noise grows as the floor over the signal; the floor is the likeliest of a
 * few. Far-off rows after Huber, Ann. Math. Stat. 35 (1964) 73.
 */
export function weighed(rows: SweepRows, state: SweepState, free: readonly number[]): SweepState {
  const n = rows.offset.length;
  const off = new Float64Array(n);
  const power = new Float64Array(n);
  let now = state;
  for (let pass = 0; pass < 6; pass += 1) {
    rows.offset.forEach((offset, i) => {
      crystalSweepAt(now.p, rows.reference, offset, rows.rt, point);
      off[i] = (rows.level[i] as number) / NEPER - (point[0] as number);
      power[i] = Math.exp(2 * (point[0] as number));
    });
    const floor = likeliestFloor(off, power, rows.trust);
    const spread = (i: number) => 1 + floor / (power[i] as number);
    const scaled = off.map((r, i) => Math.abs(r) / Math.sqrt(spread(i)));
    const typical = 1.4826 * (scaled.slice().sort()[n >> 1] as number);
    if (!(typical > 0)) return now;
    let changed = 0;
    for (let i = 0; i < n; i += 1) {
      const far = (scaled[i] as number) / typical;
      const trust = far > OUTLYING ? OUTLYING / 2 / far : 1;
      const weight = trust / spread(i);
      changed = Math.max(changed, Math.abs(weight - (rows.weight[i] as number)));
      rows.trust[i] = trust;
      rows.weight[i] = weight;
    }
    if (changed < 0.05) return now;
    now = descend(rows, { ...now, p: now.p.slice() }, free);
  }
  return now;
}

/** The floor, as a power against a through connection, that makes the scatter likeliest; or 0. */
function likeliestFloor(off: Float64Array, power: Float64Array, trust: Float64Array): number {
  const n = off.length;
  const cost = (floor: number) => {
    let squares = 0;
    let logs = 0;
    for (let i = 0; i < n; i += 1) {
      const spread = 1 + floor / (power[i] as number);
      squares += ((trust[i] as number) * (off[i] as number) ** 2) / spread;
      logs += Math.log(spread);
    }
    return 0.5 * (n * Math.log(squares / n + 1e-24) + logs);
  };
  let best = 0;
  let least = cost(0) - BELIEVED;
  for (const level of FLOORS) {
    const floor = 10 ** (level / 10);
    const here = cost(floor);
    if (here < least) [best, least] = [floor, here];
  }
  return best;
}

const point = new Float64Array(SWEEP_POINT);
