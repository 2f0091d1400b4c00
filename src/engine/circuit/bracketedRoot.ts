/**
 * Where a continuous function is zero between two points at which its signs differ.
 * If they do not differ, the end nearer to zero is returned: ask first.
 *
 * @param f the function
 * @param a, b ends of the bracket
 * @param tolerance largest distance of the answer from the root
 * @param fa, fb the function at the ends where they are known
 * @source T. R. Chandrupatla, A new hybrid quadratic/bisection algorithm, Adv. Eng. Softw. 28, 1997
 */
export function bracketedRoot(
  f: (x: number) => number,
  a: number,
  b: number,
  tolerance: number,
  fa = f(a),
  fb = f(b),
): number {
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0) return Math.abs(fa) < Math.abs(fb) ? a : b;
  // x1, x2 hold the bracket, x3 the point before; t is where in it to look next.
  let x1 = b;
  let f1 = fb;
  let x2 = a;
  let f2 = fa;
  let t = 0.5;
  for (let i = 0; i < 100; i += 1) {
    const x = x1 + t * (x2 - x1);
    const fx = f(x);
    let x3 = x1;
    let f3 = f1;
    if (fx > 0 !== f1 > 0) {
      x3 = x2;
      f3 = f2;
      x2 = x1;
      f2 = f1;
    }
    x1 = x;
    f1 = fx;
    const best = Math.abs(f1) < Math.abs(f2) ? x1 : x2;
    const least = tolerance / 2 + 2 ** -53 * Math.abs(best);
    const edge = least / Math.abs(x2 - x1);
    if (edge > 0.5 || fx === 0) return best;
    const xi = (x1 - x2) / (x3 - x2);
    const phi = (f1 - f2) / (f3 - f2);
    const smooth = phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi;
    t = smooth
      ? (f1 / (f2 - f1)) * (f3 / (f2 - f3)) +
        ((x3 - x1) / (x2 - x1)) * (f1 / (f3 - f1)) * (f2 / (f3 - f2))
      : 0.5;
    t = Math.min(1 - edge, Math.max(edge, t));
  }
  return Math.abs(f1) < Math.abs(f2) ? x1 : x2;
}
