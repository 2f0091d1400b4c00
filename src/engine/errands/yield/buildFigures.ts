import type { Ladder } from '../../circuit/ladder.ts';
import { gainAt, ladderGain } from '../../circuit/ladderGain.ts';
import { skirt } from '../../circuit/passband.ts';

/** Figures of a build, in the order in which they are kept. */
export const figures = ['width', 'ripple', 'loss', 'carrier', 'opposite'] as const;
export type FigureName = (typeof figures)[number];

/** Tones at which the other sideband is judged, Hz: as on the Carrier sheet. */
const TONES = { low: 300, high: 2700, step: 100 } as const;

/** A dip as shallow as this is none, dB. */
const SHALLOWEST = 1e-3;

/** The carrier that the filter works with. */
export interface CarrierAt {
  /** Hz */
  readonly frequency: number;
  /** +1 where it lies above the passband, −1 below. */
  readonly way: 1 | -1;
}

/**
 * Figures of one build from its response at a set of frequencies.
 *
 * Humps and dips by the parabola through three points, edges by the cubic through four; where an
 * edge lies beyond the points it is followed on the ladder itself. The −3 dB points are the
 * outermost ones, as everywhere in this program.
 *
 * @param frequency Hz, rising
 * @param gain receives the response, dB
 * @param carrier null where there is none: then two figures are left NaN
 * @param out receives width (Hz), ripple, loss, carrier below the passband, other sideband (dB)
 */
export function buildFigures(
  ladder: Ladder,
  frequency: Float64Array,
  carrier: CarrierAt | null,
  gain: Float64Array,
  out: Float64Array,
): void {
  ladderGain(ladder, frequency, gain);
  const best = peakOf(frequency, gain);
  const target = best - 3;
  const last = gain.length - 1;
  let first = 0;
  while (first < last && !reaches(frequency, gain, first, target)) first += 1;
  let end = last;
  while (end > 0 && !reaches(frequency, gain, end, target)) end -= 1;
  const low = edge(ladder, frequency, gain, target, first, -1);
  const high = edge(ladder, frequency, gain, target, end, 1);
  out[0] = high - low;
  out[1] = rippleOf(frequency, gain, best, first, end);
  out[2] = -best;
  out[3] = carrier ? best - gainAt(ladder, carrier.frequency) : Number.NaN;
  out[4] = carrier ? suppression(ladder, carrier) : Number.NaN;
}

/** The greatest gain, between the points too. */
function peakOf(frequency: Float64Array, gain: Float64Array): number {
  let best = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < gain.length; i += 1) {
    const here = gain[i] as number;
    if (here < best - 0.5) continue;
    const inside = i > 0 && i + 1 < gain.length;
    const top =
      inside && here >= (gain[i - 1] as number) && here >= (gain[i + 1] as number)
        ? turningPoint(frequency, gain, i)
        : here;
    if (top > best) best = top;
  }
  return best;
}

/** Whether a point, or a hump whose greatest point it is, reaches a level. */
function reaches(frequency: Float64Array, gain: Float64Array, i: number, target: number): boolean {
  const here = gain[i] as number;
  if (here >= target) return true;
  if (here < target - 0.5 || i === 0 || i + 1 === gain.length) return false;
  const top = here > (gain[i - 1] as number) && here > (gain[i + 1] as number);
  return top && turningPoint(frequency, gain, i) >= target;
}

/** Height of the parabola through a point and its neighbours, at its top or bottom. */
function turningPoint(frequency: Float64Array, gain: Float64Array, i: number): number {
  const left = (frequency[i] as number) - (frequency[i - 1] as number);
  const right = (frequency[i + 1] as number) - (frequency[i] as number);
  const here = gain[i] as number;
  const up = (here - (gain[i - 1] as number)) / left;
  const down = ((gain[i + 1] as number) - here) / right;
  const bend = (down - up) / (left + right);
  if (bend === 0) return here;
  const slope = (up * right + down * left) / (left + right);
  return here - (slope * slope) / (4 * bend);
}

function rippleOf(
  frequency: Float64Array,
  gain: Float64Array,
  best: number,
  first: number,
  end: number,
): number {
  let lowest = best;
  for (let i = Math.max(first, 1); i <= end && i + 1 < gain.length; i += 1) {
    const here = gain[i] as number;
    const before = gain[i - 1] as number;
    const after = gain[i + 1] as number;
    if (here <= before && here <= after) {
      lowest = Math.min(lowest, turningPoint(frequency, gain, i));
    } else if (i + 2 < gain.length && levelsOff(before, here, after, gain[i + 2] as number)) {
      lowest = Math.min(lowest, hollowBetween(frequency, gain, i) ?? lowest);
    }
  }
  return best - lowest > SHALLOWEST ? best - lowest : 0;
}

/** Whether a slope is less steep between two points than on both sides: a hollow may hide there. */
function levelsOff(a: number, b: number, c: number, d: number): boolean {
  const step = Math.abs(c - b);
  return step < Math.abs(b - a) && step < Math.abs(d - c) && (b - a) * (d - c) > 0;
}

/** Bottom of a hollow of the cubic between a point and the next; null where there is none. */
function hollowBetween(frequency: Float64Array, gain: Float64Array, i: number): number | null {
  const from = frequency[i] as number;
  const step = ((frequency[i + 1] as number) - from) / 16;
  let before = gain[i] as number;
  let here = cubic(frequency, gain, i - 1, from + step);
  for (let k = 2; k <= 16; k += 1) {
    const after = cubic(frequency, gain, i - 1, from + k * step);
    if (here < before && here < after) return here;
    before = here;
    here = after;
  }
  return null;
}

/** Where the response falls through a level between a point above it and the next one outward. */
function edge(
  ladder: Ladder,
  frequency: Float64Array,
  gain: Float64Array,
  target: number,
  inside: number,
  outward: 1 | -1,
): number {
  const from = frequency[inside] as number;
  const outside = inside + outward;
  if (outside < 0 || outside >= gain.length) {
    const step = ((frequency[gain.length - 1] as number) - (frequency[0] as number)) / 20;
    return skirt(ladder, target, from, outward * step, 50 * step, 1e-3) ?? from;
  }
  // Four points about the crossing, or the four at the end.
  const start = Math.min(Math.max(Math.min(inside, outside) - 1, 0), gain.length - 4);
  let a = from;
  let b = frequency[outside] as number;
  let fa = (gain[inside] as number) - target;
  let fb = (gain[outside] as number) - target;
  if (fa <= 0) return from;
  // The root of the cubic: false position with the Illinois step, which never leaves the bracket.
  for (let i = 0; i < 12 && Math.abs(b - a) > 1e-3; i += 1) {
    const c = b - (fb * (b - a)) / (fb - fa);
    const fc = cubic(frequency, gain, start, c) - target;
    if (Math.abs(fc) < 1e-7) return c;
    if (fc * fb < 0) {
      a = b;
      fa = fb;
    } else {
      fa /= 2;
    }
    b = c;
    fb = fc;
  }
  return b;
}

/** The cubic through four points, by Newton's divided differences. */
function cubic(frequency: Float64Array, gain: Float64Array, start: number, f: number): number {
  const x0 = frequency[start] as number;
  const x1 = frequency[start + 1] as number;
  const x2 = frequency[start + 2] as number;
  const x3 = frequency[start + 3] as number;
  const y0 = gain[start] as number;
  const y1 = gain[start + 1] as number;
  const y2 = gain[start + 2] as number;
  const y3 = gain[start + 3] as number;
  const d01 = (y1 - y0) / (x1 - x0);
  const d12 = (y2 - y1) / (x2 - x1);
  const d23 = (y3 - y2) / (x3 - x2);
  const d012 = (d12 - d01) / (x2 - x0);
  const d123 = (d23 - d12) / (x3 - x1);
  const d0123 = (d123 - d012) / (x3 - x0);
  return y0 + (f - x0) * (d01 + (f - x1) * (d012 + (f - x2) * d0123));
}

/** The other sideband below the wanted one at the worst tone of the voice, dB. */
function suppression(ladder: Ladder, { frequency, way }: CarrierAt): number {
  let least = Number.POSITIVE_INFINITY;
  for (let tone: number = TONES.low; tone <= TONES.high; tone += TONES.step) {
    const s = gainAt(ladder, frequency - way * tone) - gainAt(ladder, frequency + way * tone);
    if (s < least) least = s;
  }
  return least;
}
