export interface XY {
  readonly x: ArrayLike<number>;
  readonly y: ArrayLike<number>;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/**
 * A curve between two ends of the axis in at most about `most` points. Each stretch keeps its
 * highest and lowest point, so that neither a narrow peak nor a notch is lost, and a gap (no
 * finite height) stays a gap.
 */
export function thinned({ x, y }: XY, from: number, to: number, most = 280): Point[] {
  const inside: number[] = [];
  for (let i = 0; i < x.length; i++) {
    const at = x[i] ?? Number.NaN;
    // One point beyond each end lets the line run out of the picture.
    const next = x[i + 1] ?? at;
    const before = x[i - 1] ?? at;
    if (Math.max(at, next, before) < from || Math.min(at, next, before) > to) continue;
    if (Number.isFinite(at)) inside.push(i);
  }
  const point = (i: number): Point => ({ x: x[i] ?? 0, y: y[i] ?? 0 });
  if (inside.length <= most) return inside.map(point);

  const stretch = Math.ceil((2 * inside.length) / most);
  const kept: Point[] = [];
  for (let start = 0; start < inside.length; start += stretch) {
    let low = inside[start] ?? 0;
    let high = low;
    let gap = -1;
    for (let k = start; k < Math.min(start + stretch, inside.length); k++) {
      const i = inside[k] ?? 0;
      if (!Number.isFinite(y[i])) gap = i;
      if ((y[i] ?? 0) < (y[low] ?? 0)) low = i;
      if ((y[i] ?? 0) > (y[high] ?? 0)) high = i;
    }
    const of = [...new Set([low, high, gap])].filter((i) => i >= 0).sort((a, b) => a - b);
    kept.push(...of.map(point));
  }
  return kept;
}

/** The curve's height at a place along the axis, by straight lines; null outside the curve. */
export function heightAt({ x, y }: XY, at: number): number | null {
  let low = 0;
  let high = x.length - 1;
  if (high < 0 || at < (x[0] ?? 0) || at > (x[high] ?? 0)) return null;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((x[middle] ?? 0) > at) high = middle;
    else low = middle;
  }
  const [x0 = 0, x1 = 0, y0 = 0, y1 = 0] = [x[low], x[high], y[low], y[high]];
  return x1 === x0 ? y0 : y0 + ((at - x0) / (x1 - x0)) * (y1 - y0);
}
