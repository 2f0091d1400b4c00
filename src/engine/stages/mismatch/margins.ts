import type { Around } from '../../circuit/mismatch/aroundCircle.ts';
import { ruleSets } from '../../data/ruleSets.ts';
import type { Level } from './levels.ts';
import type { MismatchSeen } from './seen.ts';

/** The least margins over the harmonics, an entry a step of the round, dB; and whose they are. */
export interface Margins {
  readonly plain: Float64Array;
  readonly order: Int8Array;
  readonly same: Float64Array;
  /** −∞ where nothing bounds a harmonic. */
  readonly any: Float64Array;
}

/**
 * Limit less level of the worst harmonic along the round: the limit of a rule moves with the power
 * that still reaches the antenna, the level with what becomes of the fundamental.
 *
 * @param steps how many of the angles are gone through
 */
export function marginsAround(
  seen: MismatchSeen,
  rows: readonly Level[],
  around: Around,
  steps: number,
): Margins {
  const plain = new Float64Array(steps).fill(Number.POSITIVE_INFINITY);
  const same = new Float64Array(steps).fill(Number.POSITIVE_INFINITY);
  const any = new Float64Array(steps).fill(Number.POSITIVE_INFINITY);
  const order = new Int8Array(steps);
  const { limit } = ruleSets[seen.rules];
  for (let k = 0; k < steps; k += 1) {
    const power = around.power[k] ?? 0;
    const down = 10 * Math.log10(around.gain[k] ?? 1);
    for (const row of rows) {
      const asked = limit({
        frequency: row.order * seen.nominal,
        fundamental: seen.nominal,
        power,
        own: seen.ownLimit,
        ownLines: seen.ownRows,
      });
      const margin = down - asked - row.plain;
      if (margin < (plain[k] ?? 0)) {
        plain[k] = margin;
        order[k] = row.order;
      }
      same[k] = Math.min(same[k] ?? 0, down - asked - row.same);
      any[k] = Math.min(any[k] ?? 0, down - asked - row.any);
    }
  }
  return { plain, order, same, any };
}
