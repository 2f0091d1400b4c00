import { commonCapacitance } from '../../circuit/alignedLadder.ts';
import { seriesResonance } from '../../circuit/crystal.ts';
import type { Ladder } from '../../circuit/ladder.ts';
import { powerGainAt } from '../../circuit/ladderGain.ts';
import { lookAt } from './lookAt.ts';
import type { Judged } from './merit.ts';
import { aligningFor, type Meshes, meshesOf } from './meshes.ts';
import { type Arrangement, positionsOf, type Task } from './task.ts';

/** Looks at arrangements one after the other, with the same arrays. */
export interface Judge {
  /** Ripple, fall, width and loss from a few points; the record is reused by the next look. */
  readonly look: (arrangement: Arrangement) => Judged;
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
  const positions = positionsOf(task);
  const counts = Array.from({ length: n }, (_, i) => positions.filter((p) => p === i).length);
  const fs = Float64Array.from(crystals, seriesResonance);
  const crystalLm = Float64Array.from(crystals, (one) => one.lm);
  const crystalRm = Float64Array.from(crystals, (one) => one.rm);
  const crystalC0 = Float64Array.from(crystals, (one) => one.c0);
  const lm = new Float64Array(n);
  const cm = new Float64Array(n);
  const rm = new Float64Array(n);
  const c0 = new Float64Array(n);
  const common = commonCapacitance(design);
  const series = aligning === 'design' ? design.series : new Float64Array(n).fill(common);
  const ladder: Ladder = { ...design, lm, cm, rm, c0, series };
  const gain = new Float64Array(offsets.length);
  const at = new Float64Array(offsets.length);
  const looks = { ripple: 0, fall: 0, width: 0, loss: 0, apart: 0 };

  const mesh = new Float64Array(n);

  /** Puts the crystals at their positions; answers the middle of the meshes, Hz. */
  const place = (arrangement: Arrangement): number => {
    let sum = 0;
    mesh.fill(0);
    for (let i = 0; i < n; i += 1) {
      lm[i] = 0;
      rm[i] = 0;
      c0[i] = 0;
    }
    // Side by side as `sideBySide` has it: 1/Lm and 1/Rm add, resonances weighted by 1/Lm.
    for (let s = 0; s < positions.length; s += 1) {
      const c = arrangement[s] as number;
      const i = positions[s] as number;
      const perL = 1 / (crystalLm[c] as number);
      lm[i] = (lm[i] as number) + perL;
      rm[i] = (rm[i] as number) + 1 / (crystalRm[c] as number);
      c0[i] = (c0[i] as number) + (crystalC0[c] as number);
      cm[i] = (s > 0 && positions[s - 1] === i ? (cm[i] as number) : 0) + perL * (fs[c] as number);
      const f = frequency[c * n + i] as number;
      sum += f;
      mesh[i] = (mesh[i] as number) + f / (counts[i] as number);
    }
    for (let i = 0; i < n; i += 1) {
      const perL = lm[i] as number;
      const w = (2 * Math.PI * (cm[i] as number)) / perL;
      lm[i] = 1 / perL;
      cm[i] = perL / (w * w);
      rm[i] = 1 / (rm[i] as number);
    }
    if (aligning !== 'each') return sum / positions.length;
    const shunt = design.form === 'shunt';
    let best = mesh[0] as number;
    for (const f of mesh) best = shunt ? Math.min(best, f) : Math.max(best, f);
    for (let i = 0; i < n; i += 1) {
      const one = {
        lm: lm[i] as number,
        cm: cm[i] as number,
        rm: rm[i] as number,
        c0: c0[i] as number,
      };
      const exact = mesh[i] === best ? 0 : aligningFor(design, one, own[i] as number, best);
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
      looks.apart = apartOf(arrangement, fs);
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

/** From the lowest to the highest series resonance of an arrangement, Hz. */
export function apartOf(arrangement: Arrangement, fs: Float64Array): number {
  let low = Number.POSITIVE_INFINITY;
  let high = 0;
  for (let s = 0; s < arrangement.length; s += 1) {
    const f = fs[arrangement[s] as number] as number;
    low = Math.min(low, f);
    high = Math.max(high, f);
  }
  return high - low;
}
