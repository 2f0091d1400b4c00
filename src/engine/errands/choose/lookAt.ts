import { CORNER, type Looks } from './merit.ts';

const DB = 10 / Math.LN10;
const THREE = 10 ** -0.3;

/**
 * Figures of a passband from samples of its power gain: humps and dips by parabolas, edges between
 * samples by logarithms. Nothing is allocated.
 *
 * @param f Hz, rising
 * @param gain power gain as a plain ratio
 * @param looks receives the figures
 */
export function lookAt(
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
  let least = Math.min(gainBetween(f, gain, low + corner), gainBetween(f, gain, high - corner));
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

/** From this slope down a fall is no shoulder any more, dB over the width. */
const STEEP = 1;

/**
 * The deepest dip to one side of the best point, dB, with a hump beyond it.
 *
 * A level shoulder counts as a dip of its depth, a sloping one the less the steeper it is: else the
 * least difference would make a deep dip out of no ripple at all. A hump counts wholly if it comes
 * within 3 dB of the best, less and less to 6 dB, so that nothing is won by pressing one just below
 * the edge of the passband.
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
  for (let i = peak + way; i > 0 && i < gain.length - 1; i += way) {
    const here = gain[i] as number;
    const before = gain[i - way] as number;
    const after = gain[i + way] as number;
    const isDip = here <= before && here <= after;
    lowest = Math.min(lowest, isDip ? topAt(f, gain, i, -1) : here);
    const part = Math.abs((f[i + way] as number) - (f[i - way] as number)) / width;
    const slope = (DB * Math.log(after / before)) / part;
    // How far it rises again: the hump itself, or what is as good as one.
    const rises = Math.min(1, Math.max(0, 1 + slope / STEEP));
    if (rises === 0) continue;
    const down = DB * Math.log(best / Math.max(here, after));
    const counts = Math.min(1, Math.max(0, 2 - down / 3));
    deepest = Math.max(deepest, rises * counts * DB * Math.log(best / lowest));
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

/** The gain at a frequency between samples: the parabola through the nearest three. */
function gainBetween(f: Float64Array, gain: Float64Array, at: number): number {
  let i = 1;
  while (i < gain.length - 2 && (f[i] as number) < at) i += 1;
  if (i > 1 && at - (f[i - 1] as number) < (f[i] as number) - at) i -= 1;
  const a = f[i - 1] as number;
  const b = f[i] as number;
  const c = f[i + 1] as number;
  const left = ((gain[i] as number) - (gain[i - 1] as number)) / (b - a);
  const right = ((gain[i + 1] as number) - (gain[i] as number)) / (c - b);
  const bend = (right - left) / (c - a);
  return (gain[i - 1] as number) + left * (at - a) + bend * (at - a) * (at - b);
}
