import { commonCapacitance } from '../../circuit/alignedLadder.ts';
import type { Ladder } from '../../circuit/ladder.ts';
import { powerGainAt } from '../../circuit/ladderGain.ts';
import { lookAt } from './lookAt.ts';
import type { Looks } from './merit.ts';
import { aligningFor, type Meshes, meshesOf } from './meshes.ts';
import type { Arrangement, Task } from './task.ts';

/** Looks at arrangements one after the other, with the same arrays. */
export interface Judge {
  /** Ripple, fall, width and loss from a few points; the record is reused by the next look. */
  readonly look: (arrangement: Arrangement) => Looks;
  /** The ladder of an arrangement, for keeps. */
  readonly build: (arrangement: Arrangement) => Ladder;
  readonly meshes: Meshes;
}

/**
 * @param offsets frequencies to look at, from the mean of the meshes (with aligning capacitors for
 *   each: from their common frequency), Hz, rising, dense towards the edges
 */
export function judgeOf(task: Task, offsets: Float64Array): Judge {
  const { crystals, design, aligning, round } = task;
  const n = design.lm.length;
  const meshes = meshesOf(task);
  const { frequency, own } = meshes;
  const lm = new Float64Array(n);
  const cm = new Float64Array(n);
  const rm = new Float64Array(n);
  const c0 = new Float64Array(n);
  const common = commonCapacitance(design);
  const series = aligning === 'design' ? design.series : new Float64Array(n).fill(common);
  const ladder: Ladder = { ...design, lm, cm, rm, c0, series };
  const gain = new Float64Array(offsets.length);
  const at = new Float64Array(offsets.length);
  const looks = { ripple: 0, fall: 0, width: 0, loss: 0 };

  const place = (arrangement: Arrangement): number => {
    let sum = 0;
    let best = design.form === 'shunt' ? Number.POSITIVE_INFINITY : 0;
    for (let i = 0; i < n; i += 1) {
      const c = arrangement[i] as number;
      const crystal = crystals[c];
      if (!crystal) continue;
      lm[i] = crystal.lm;
      cm[i] = crystal.cm;
      rm[i] = crystal.rm;
      c0[i] = crystal.c0;
      const f = frequency[c * n + i] as number;
      sum += f;
      best = design.form === 'shunt' ? Math.min(best, f) : Math.max(best, f);
    }
    if (aligning !== 'each') return sum / n;
    for (let i = 0; i < n; i += 1) {
      const c = arrangement[i] as number;
      const crystal = crystals[c];
      if (!crystal) continue;
      const exact =
        frequency[c * n + i] === best ? 0 : aligningFor(design, crystal, own[i] as number, best);
      series[i] = exact === 0 ? common : round(common + exact);
    }
    return best;
  };

  return {
    meshes,
    look: (arrangement) => {
      const middle = place(arrangement);
      for (let i = 0; i < offsets.length; i += 1) {
        const f = middle + (offsets[i] as number);
        at[i] = f;
        gain[i] = powerGainAt(ladder, f);
      }
      lookAt(at, gain, looks);
      return looks;
    },
    build: (arrangement) => {
      place(arrangement);
      return {
        ...ladder,
        lm: lm.slice(),
        cm: cm.slice(),
        rm: rm.slice(),
        c0: c0.slice(),
        series: series.slice(),
      };
    },
  };
}
