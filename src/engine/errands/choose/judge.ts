import type { Ladder } from '../../circuit/ladder.ts';
import { powerGainAt } from '../../circuit/ladderGain.ts';
import { CORNER, type Looks } from './merit.ts';
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
  const series = Float64Array.from(aligning === 'design' ? design.series : new Float64Array(n));
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
      series[i] = exact === 0 ? 0 : round(exact);
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

const DB = 10 / Math.LN10;
const THREE = 10 ** -0.3;

/** Figures of a passband from samples of its power gain. */
function lookAt(
  f: Float64Array,
  gain: Float64Array,
  looks: { -readonly [K in keyof Looks]: number },
): void {
  const last = gain.length - 1;
  let best = 0;
  let peak = 0;
  for (let i = 0; i <= last; i += 1) {
    const top = topAt(f, gain, i, 1);
    if (top > best) {
      best = top;
      peak = i;
    }
  }
  const enough = best * THREE;
  let first = 0;
  while (first < last && (gain[first] as number) < enough) first += 1;
  let end = last;
  while (end > first && (gain[end] as number) < enough) end -= 1;
  const low = first === 0 ? (f[0] as number) : crossing(f, gain, first - 1, enough);
  const high = end === last ? (f[last] as number) : crossing(f, gain, end, enough);
  const corner = CORNER * (high - low);
  let least = best;
  for (let i = first; i <= end; i += 1) {
    const inside = (f[i] as number) > low + corner && (f[i] as number) < high - corner;
    if (inside) least = Math.min(least, topAt(f, gain, i, -1));
  }
  const width = high - low;
  looks.ripple = Math.max(
    dipsBeside(f, gain, peak, -1, best, width),
    dipsBeside(f, gain, peak, 1, best, width),
  );
  looks.fall = DB * Math.log(best / least);
  looks.width = width;
  looks.loss = -DB * Math.log(best);
}

/** Down this slope a passband counts as level, dB over its width. */
const LEVEL = 0.5;

/**
 * The deepest dip to one side of the best point, dB, with a hump beyond it. Where the response
 * goes down by less than half a dB in its width, that counts as a dip and a hump: else a level
 * shoulder far down would pass for no ripple, and the least difference would make it one. The hump
 * counts wholly if it comes within 3 dB of the best, less and less to 6 dB, so that nothing is won by
 * pressing one just below the edge of the passband.
 */
function dipsBeside(
  f: Float64Array,
  gain: Float64Array,
  peak: number,
  way: 1 | -1,
  best: number,
  width: number,
): number {
  let lowest = best;
  let deepest = 0;
  let rising = false;
  for (let i = peak; i > 0 && i < gain.length - 1; i += way) {
    const here = gain[i] as number;
    const next = gain[i + way] as number;
    const step = Math.abs((f[i + way] as number) - (f[i] as number));
    const rises = next > here * (1 - (LEVEL / DB) * (step / width));
    if (rises && !rising) lowest = Math.min(lowest, topAt(f, gain, i, -1));
    if (!rises && rising) {
      const down = DB * Math.log(best / topAt(f, gain, i, 1));
      const counts = Math.min(1, Math.max(0, 2 - down / 3));
      deepest = Math.max(deepest, counts * DB * Math.log(best / lowest));
    }
    rising = rises;
  }
  return deepest;
}

/** Height of the parabola through a sample and its neighbours where it turns; else the sample. */
function topAt(f: Float64Array, gain: Float64Array, i: number, way: 1 | -1): number {
  const q = gain[i] as number;
  if (i === 0 || i === gain.length - 1) return q;
  const p = gain[i - 1] as number;
  const r = gain[i + 1] as number;
  if (way * (q - p) < 0 || way * (q - r) < 0) return q;
  const a = f[i - 1] as number;
  const b = f[i] as number;
  const c = f[i + 1] as number;
  const left = (q - p) / (b - a);
  const right = (r - q) / (c - b);
  const bend = (right - left) / (c - a);
  if (bend === 0) return q;
  const slope = (left * (c - b) + right * (b - a)) / (c - a);
  return Math.max(q - (slope * slope) / (4 * bend), q / 2);
}

/** Where the gain passes a level between two samples, by its logarithm. */
function crossing(f: Float64Array, gain: Float64Array, i: number, level: number): number {
  const a = Math.log(gain[i] as number);
  const b = Math.log(gain[i + 1] as number);
  const t = (Math.log(level) - a) / (b - a);
  return (f[i] as number) + t * ((f[i + 1] as number) - (f[i] as number));
}
