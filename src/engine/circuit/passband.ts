import { bracketedMaximum } from './bracketedMaximum.ts';
import { bracketedRoot } from './bracketedRoot.ts';
import type { Ladder } from './ladder.ts';
import { gainAt, powerGainAt } from './ladderGain.ts';

/** The best point of a passband and where the response falls from it, by 3 dB. */
export interface Passband {
  /** Frequency of the greatest gain, Hz. */
  readonly peak: number;
  /** The gain there, dB. */
  readonly gain: number;
  /** Outermost frequencies at which the gain is 3 dB less, Hz. */
  readonly low: number;
  readonly high: number;
}

/**
 * How far outside of what was looked at an edge or a peak may lie, in sixteenths of that: far, since
 * losses can make a passband many times as wide as its couplings say.
 */
const FURTHEST = 1e6;

/** Distance to either side at which the response is compared to find where it is level, Hz. */
export const LEVEL_STEP = 1;

/**
 * Finds the passband of a ladder.
 *
 * The peak is the middle of the two hertz at whose ends the gain is alike, next to the greatest
 * gain; the end of what was looked at where the gain rises on and on. Where it never falls by 3 dB
 * there is no edge: the outermost frequency looked at stands for it, see `standsOut`. The edges are
 * the outermost 3 dB points: a dip deeper than that inside does not count.
 *
 * @param around frequencies to look at first, Hz, rising; four or more for every hump that there
 *   may be, and a little outside of where the edges are expected. See `spanFrequencies`.
 * @param tolerance of the edges, Hz; the peak is found ten times as closely
 */
export function passband(ladder: Ladder, around: readonly number[], tolerance = 1e-7): Passband {
  const sampled = around.map((f) => powerGainAt(ladder, f));
  const { peak, gain } = highest(ladder, around, sampled, tolerance / 10);
  // The peak joins the samples, so that what is above 3 dB down is never empty.
  const after = around.findIndex((f) => f > peak);
  const top = after < 0 ? around.length : after;
  const at = around.toSpliced(top, 0, peak);
  const power = sampled.toSpliced(top, 0, 10 ** (gain / 10));
  const target = gain - 3;
  const enough = 10 ** (target / 10);
  const reaches = (i: number) =>
    (power[i] ?? 0) >= enough || humpReaches(ladder, at, power, i, enough);
  let first = 0;
  while (first < top && !reaches(first)) first += 1;
  let last = at.length - 1;
  while (last > top && !reaches(last)) last -= 1;
  const step = ((at.at(-1) ?? 0) - (at[0] ?? 0)) / 16;
  return {
    peak,
    gain,
    low: edge(ladder, target, at[first] ?? peak, at[first - 1], -step, tolerance),
    high: edge(ladder, target, at[last] ?? peak, at[last + 1], step, tolerance),
  };
}

/** What comes through at least of anything that may be called a filter, dB. */
export const LEAST_GAIN = -30;

/** Whether a passband stands out: its response falls by 3 dB on either side. */
export function standsOut(ladder: Ladder, { low, high, gain }: Passband): boolean {
  const down = (f: number) => gain - gainAt(ladder, f);
  return down(low) > 2.99 && down(high) > 2.99;
}

/**
 * The next frequency outward at which the gain has fallen to a level, Hz; null if it does not
 * within `reach`.
 *
 * @param level dB
 * @param from where the gain is still above it, Hz
 * @param step first step outward, Hz; its sign is the direction
 * @param reach furthest distance to look, Hz
 */
export function skirt(
  ladder: Ladder,
  level: number,
  from: number,
  step: number,
  reach: number,
  tolerance = 1e-7,
): number | null {
  const over = (f: number) => gainAt(ladder, f) - level;
  let inside = from;
  let overInside = over(inside);
  if (overInside <= 0) return from;
  let stride = step;
  while (Math.abs(stride) > 0) {
    const outside = inside + stride;
    if (Math.abs(outside - from) > reach || outside <= 0) return null;
    const overOutside = over(outside);
    if (overOutside <= 0) {
      return bracketedRoot(over, inside, outside, tolerance, overInside, overOutside);
    }
    inside = outside;
    overInside = overOutside;
    stride *= 1.2;
  }
  return null;
}

function edge(
  ladder: Ladder,
  target: number,
  inside: number,
  outside: number | undefined,
  step: number,
  tolerance: number,
): number {
  const over = (f: number) => gainAt(ladder, f) - target;
  if (outside !== undefined) return bracketedRoot(over, inside, outside, tolerance);
  return skirt(ladder, target, inside, step, Math.abs(step) * FURTHEST, tolerance) ?? inside;
}

/** The greatest gain: of the humps that the samples show, those that may be it are climbed. */
function highest(
  ladder: Ladder,
  at: readonly number[],
  power: readonly number[],
  tolerance: number,
): { peak: number; gain: number } {
  let best = 0;
  const tops = power.map((here, i) => {
    const top = isTop(power, i) ? topBetween(at, power, i) : 0;
    best = Math.max(best, here, top);
    return top;
  });
  let found = { peak: 0, gain: Number.NEGATIVE_INFINITY };
  for (let i = 0; i < tops.length; i += 1) {
    if ((tops[i] ?? 0) < best * 0.97) continue;
    const peak = levelPoint(ladder, at, i, tolerance);
    const gain = gainAt(ladder, peak);
    if (gain > found.gain) found = { peak, gain };
  }
  return found;
}

const isTop = (power: readonly number[], i: number): boolean =>
  (power[i] ?? 0) >= (power[i - 1] ?? 0) && (power[i] ?? 0) >= (power[i + 1] ?? 0);

/** Top of the parabola through a sample and its neighbours. */
function topBetween(at: readonly number[], power: readonly number[], i: number): number {
  const [a, b, c] = [at[i - 1], at[i] ?? 0, at[i + 1]];
  const [p = 0, q = 0, r = 0] = [power[i - 1], power[i], power[i + 1]];
  if (a === undefined || c === undefined) return q;
  const left = (q - p) / (b - a);
  const right = (r - q) / (c - b);
  const bend = (right - left) / (c - a);
  const slope = (left * (c - b) + right * (b - a)) / (c - a);
  return bend < 0 ? q - (slope * slope) / (4 * bend) : q;
}

/**
 * Whether a hump between samples reaches a power that the samples themselves miss. If so, the
 * sample is moved to its top.
 */
function humpReaches(
  ladder: Ladder,
  at: number[],
  power: readonly number[],
  i: number,
  enough: number,
): boolean {
  if ((power[i] ?? 0) < enough * 0.5 || !isTop(power, i)) return false;
  const [from, to] = [at[i - 1], at[i + 1]];
  if (from === undefined || to === undefined) return false;
  const hump = bracketedMaximum((f) => powerGainAt(ladder, f), from, to, (to - from) * 1e-6);
  if (hump.value < enough) return false;
  at[i] = hump.at;
  return true;
}

/** Climbs to the greatest gain next to a sample, then to the point about which it is level. */
function levelPoint(ladder: Ladder, at: readonly number[], top: number, tolerance: number): number {
  const rise = (f: number) => gainAt(ladder, f + LEVEL_STEP) - gainAt(ladder, f - LEVEL_STEP);
  const here = at[top] ?? 0;
  let left = at[top - 1] ?? here - LEVEL_STEP;
  let right = at[top + 1] ?? here + LEVEL_STEP;
  // Where the greatest sample is at the end of all, go on outward, but not for ever.
  const far = (((at.at(-1) ?? here) - (at[0] ?? here)) * FURTHEST) / 16;
  while (rise(left) < 0) {
    left -= here - left + LEVEL_STEP;
    if (left <= LEVEL_STEP || here - left > far) return here;
  }
  while (rise(right) > 0) {
    right += right - here + LEVEL_STEP;
    if (right - here > far) return here;
  }
  return bracketedRoot(rise, left, right, tolerance);
}
