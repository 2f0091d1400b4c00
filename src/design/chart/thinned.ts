export interface XY {
  readonly x: ArrayLike<number>;
  readonly y: ArrayLike<number>;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Points of the curve between two ends of the axis, and one beyond each so that it runs out. */
function inside({ x, y }: XY, from: number, to: number): Point[] {
  const points: Point[] = [];
  for (let i = 0; i < x.length; i++) {
    const at = x[i] ?? Number.NaN;
    const next = x[i + 1] ?? at;
    const before = x[i - 1] ?? at;
    if (Math.max(at, next, before) < from || Math.min(at, next, before) > to) continue;
    if (Number.isFinite(at)) points.push({ x: at, y: y[i] ?? Number.NaN });
  }
  return points;
}

/** Marks the points of one unbroken stretch that straight lines cannot do without. */
function mark(points: readonly Point[], first: number, last: number, by: Pixels, keep: Uint8Array) {
  const open: [number, number][] = [[first, last]];
  keep[first] = keep[last] = 1;
  for (let span = open.pop(); span !== undefined; span = open.pop()) {
    const [a, b] = span;
    const [p, q] = [points[a], points[b]];
    if (p === undefined || q === undefined || b - a < 2) continue;
    const dx = (q.x - p.x) * by.x;
    const dy = (q.y - p.y) * by.y;
    const length = Math.hypot(dx, dy) || 1;
    let worst = a;
    let off = by.slack;
    for (let i = a + 1; i < b; i++) {
      const point = points[i];
      if (point === undefined) continue;
      const far = Math.abs(dx * (point.y - p.y) * by.y - dy * (point.x - p.x) * by.x) / length;
      if (far > off) [worst, off] = [i, far];
    }
    if (worst === a) continue;
    keep[worst] = 1;
    open.push([a, worst], [worst, b]);
  }
}

/** How large the curve is drawn: pixels for one of `x` and of `y`, and how far a line may stray. */
export interface Pixels {
  readonly x: number;
  readonly y: number;
  readonly slack: number;
}

/**
 * A curve between two ends of the axis in as few points as the eye needs: none lies further than
 * `slack` pixels from the line drawn, and there are `most` at most. A gap (no finite height) stays.
 * Method: Douglas and Peucker, Cartographica 10 (1973).
 */
export function thinned(curve: XY, from: number, to: number, by: Pixels, most = 300): Point[] {
  const points = inside(curve, from, to);
  const keep = new Uint8Array(points.length);
  let start = 0;
  for (let i = 0; i <= points.length; i++) {
    const gap = i === points.length || !Number.isFinite(points[i]?.y);
    if (!gap) continue;
    if (i > start) mark(points, start, i - 1, by, keep);
    // One point without a height is enough to break the line.
    if (i > start && i < points.length) keep[i] = 1;
    start = i + 1;
  }
  const kept = points.filter((_, i) => keep[i] === 1);
  return kept.length > most && by.slack < 64
    ? thinned(curve, from, to, { ...by, slack: by.slack * 2 }, most)
    : kept;
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
