/*
 * Curves for the gallery only: smooth, plausible shapes from closed forms, so that the pictures
 * have something to show. No rig was worked out for them; nothing is tested against them.
 */

const chebyshev = (n: number, x: number) =>
  Math.abs(x) <= 1 ? Math.cos(n * Math.acos(x)) : Math.cosh(n * Math.acosh(Math.abs(x)));

/** A six-pole band-pass about `centre` kHz, steeper above than below, in dB. */
export function bandPass(from: number, to: number, points: number, centre: number, width: number) {
  const x = new Float64Array(points);
  const y = new Float64Array(points);
  for (let i = 0; i < points; i++) {
    const at = from + ((to - from) * i) / (points - 1);
    const w = (at - centre) / (width / 2);
    const skew = w > 0 ? w * 1.08 : w * 0.94;
    const loss = 10 * Math.log10(1 + 0.035 * chebyshev(6, skew) ** 2);
    x[i] = at;
    y[i] = -1.8 - loss - 0.35 * Math.min(1, skew * skew);
  }
  return { x, y };
}

/** A curve from a formula. */
export function drawn(from: number, to: number, points: number, height: (x: number) => number) {
  const x = Float64Array.from(
    { length: points },
    (_, i) => from + ((to - from) * i) / (points - 1),
  );
  return { x, y: x.map(height) };
}
