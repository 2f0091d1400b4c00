import { SWEEP, SWEEP_SIZE } from './crystalSweep.ts';

/** What is known of a sweep before it is fitted. */
export interface StartFrom {
  /** Hz above the reference, rising. */
  readonly offset: Float64Array;
  readonly reference: number;
  /** dB against a through connection. */
  readonly level: Float64Array;
  /** Index of the highest row. */
  readonly peak: number;
  readonly rt: number;
  /** F */
  readonly c0: number;
  readonly shunt: number;
}

/**
 * Parameters near enough for a fit to find its way, several sets, the likeliest first.
 *
 * Near series resonance 1/|S21|² is a parabola in frequency: its vertex gives fs and the whole
 * resistance, its curvature Lm. Where the rows are too far apart for that, the sets differ.
 */
export function crystalFitStarts(from: StartFrom): Float64Array[] {
  const { offset, level, peak, rt, reference } = from;
  const top = level[peak] as number;
  const at = offset[peak] as number;
  const before = (offset[peak - 1] ?? at) as number;
  const after = (offset[peak + 1] ?? at) as number;
  const dip = dipAfter(level, peak);
  const starts: Float64Array[] = [];
  const add = (fs: number, lm: number, whole: number) => {
    if (!(lm > 1e-7 && lm < 1e3)) return;
    const cm = 1 / ((2 * Math.PI * reference) ** 2 * lm);
    const c0s = [from.c0];
    if (dip !== null) {
      const gap = ((offset[dip] as number) - fs) / reference;
      c0s.unshift(Math.min(Math.max(cm / (2 * gap), 1e-14), 1e-10));
    } else {
      // No dip: fp lies beyond the last row.
      const gap = ((offset.at(-1) as number) - fs) / reference;
      const most = cm / (2 * gap);
      if (most < 1.5 * from.c0) c0s.splice(0, 1, 0.8 * most, 0.4 * most);
    }
    for (const c0 of c0s) {
      const p = new Float64Array(SWEEP_SIZE);
      p[SWEEP.fs] = fs;
      p[SWEEP.lnLm] = Math.log(lm);
      p[SWEEP.rm] = Math.max(whole - 2 * rt, 0.02 * rt);
      p[SWEEP.c0] = c0;
      p[SWEEP.shunt] = from.shunt;
      starts.push(p);
    }
  };
  for (const below of [6, 12, 25]) {
    const fit = parabola(from, rowsWithin(level, peak, below));
    if (fit === null) continue;
    const curved = Math.sqrt(fit.curvature) * 2 * rt;
    const whole = 2 * rt * Math.sqrt(Math.max(fit.least, 1));
    add(fit.at, curved / (4 * Math.PI), whole);
  }
  // From the skirts alone: |S21| ≈ R/(2π·Lm·|f − fs|) some way out, for fs about the peak.
  const whole = 2 * rt * 10 ** (-top / 20);
  for (const fs of [at, (at + before) / 2, (at + after) / 2]) {
    const far = skirtRow(from, fs);
    if (far === null) continue;
    const size = 10 ** ((level[far] as number) / 20);
    const away = Math.abs((offset[far] as number) - fs);
    add(fs, (2 * rt) / (4 * Math.PI * away * size), Math.max(Math.min(whole, 40 * rt), 2 * rt));
  }
  // Something to start from, whatever the rows are like.
  if (starts.length === 0) {
    const span = Math.max((offset.at(-1) as number) - (offset[0] as number), 1);
    add(at, Math.min(Math.max(whole / (0.2 * Math.PI * span), 1e-5), 100), whole);
  }
  return starts;
}

/** First and last row around the peak that are at most so far below it; five rows at least. */
function rowsWithin(level: Float64Array, peak: number, below: number): [number, number] {
  const floor = (level[peak] as number) - below;
  let first = peak;
  let last = peak;
  while (first > 0 && (level[first - 1] as number) > floor) first -= 1;
  while (last < level.length - 1 && (level[last + 1] as number) > floor) last += 1;
  while (last - first < 4 && (first > 0 || last < level.length - 1)) {
    if (first > 0) first -= 1;
    if (last < level.length - 1 && last - first < 4) last += 1;
  }
  return [first, last];
}

/** 1/|S21|² = least + curvature·(f − at)², by least squares of equal relative weight. */
function parabola({ offset, level, peak }: StartFrom, [first, last]: [number, number]) {
  const origin = offset[peak] as number;
  const unit = Math.max((offset[last] as number) - origin, origin - (offset[first] as number));
  if (!(unit > 0)) return null;
  // Sums of weight times powers of x, and of those times y; the weight is 1/y².
  const s = [0, 0, 0, 0, 0];
  const t = [0, 0, 0];
  for (let i = first; i <= last; i += 1) {
    const x = ((offset[i] as number) - origin) / unit;
    const y = 10 ** (-(level[i] as number) / 10);
    for (let k = 0; k < 5; k += 1) s[k] = (s[k] as number) + x ** k / (y * y);
    for (let k = 0; k < 3; k += 1) t[k] = (t[k] as number) + x ** k / y;
  }
  const [s0, s1, s2, s3, s4] = s as [number, number, number, number, number];
  const [t0, t1, t2] = t as [number, number, number];
  const det = s0 * (s2 * s4 - s3 * s3) - s1 * (s1 * s4 - s3 * s2) + s2 * (s1 * s3 - s2 * s2);
  const a = t0 * (s2 * s4 - s3 * s3) - s1 * (t1 * s4 - s3 * t2) + s2 * (t1 * s3 - s2 * t2);
  const b = s0 * (t1 * s4 - s3 * t2) - t0 * (s1 * s4 - s3 * s2) + s2 * (s1 * t2 - t1 * s2);
  const c = s0 * (s2 * t2 - t1 * s3) - s1 * (s1 * t2 - t1 * s2) + t0 * (s1 * s3 - s2 * s2);
  if (!(det !== 0) || !(c / det > 0)) return null;
  const vertex = -b / (2 * c);
  if (!(Math.abs(vertex) < 2)) return null;
  return {
    at: origin + vertex * unit,
    least: a / det - (b * b) / (4 * c * det),
    curvature: c / det / (unit * unit),
  };
}

/** The lowest row above the peak, where the level rises again behind it: parallel resonance. */
function dipAfter(level: Float64Array, peak: number): number | null {
  let low = peak;
  for (let i = peak + 1; i < level.length; i += 1) {
    if ((level[i] as number) < (level[low] as number)) low = i;
  }
  let behind = Number.NEGATIVE_INFINITY;
  for (let i = low; i < level.length; i += 1) behind = Math.max(behind, level[i] as number);
  return low > peak && behind > (level[low] as number) + 3 ? low : null;
}

/** A row some 10 to 30 dB down the lower skirt, else the upper, which C0 bends. */
function skirtRow({ offset, level, peak }: StartFrom, fs: number): number | null {
  for (const step of [-1, 1]) {
    for (let i = peak + step; i >= 0 && i < level.length; i += step) {
      if (Math.abs((offset[i] as number) - fs) > 0 && (level[i] as number) < -10) return i;
    }
  }
  return null;
}
