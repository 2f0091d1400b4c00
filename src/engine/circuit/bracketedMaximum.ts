const GOLDEN = (3 - Math.sqrt(5)) / 2;

/** Where a function is greatest, and how great. */
export interface Maximum {
  readonly at: number;
  readonly value: number;
}

/**
 * The greatest value of a function between two points, by parabolas and golden sections.
 * With several humps between them it finds one.
 *
 * @param tolerance of the place, absolute
 * @source R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 5
 */
export function bracketedMaximum(
  f: (x: number) => number,
  from: number,
  to: number,
  tolerance: number,
): Maximum {
  let a = from;
  let b = to;
  let x = a + GOLDEN * (b - a);
  let w = x;
  let v = x;
  let fx = f(x);
  let fw = fx;
  let fv = fx;
  let step = 0;
  let before = 0;
  for (let i = 0; i < 100; i += 1) {
    const middle = (a + b) / 2;
    if (Math.abs(x - middle) <= 2 * tolerance - (b - a) / 2) break;
    let golden = true;
    if (Math.abs(before) > tolerance) {
      // A parabola through the three best points.
      const r = (x - w) * (fx - fv);
      let q = (x - v) * (fx - fw);
      let p = (x - v) * q - (x - w) * r;
      q = 2 * (q - r);
      if (q > 0) p = -p;
      q = Math.abs(q);
      if (Math.abs(p) < Math.abs((q * before) / 2) && p > q * (a - x) && p < q * (b - x)) {
        before = step;
        step = p / q;
        golden = false;
        const u = x + step;
        if (u - a < 2 * tolerance || b - u < 2 * tolerance)
          step = x < middle ? tolerance : -tolerance;
      }
    }
    if (golden) {
      before = (x < middle ? b : a) - x;
      step = GOLDEN * before;
    }
    const u = x + (Math.abs(step) >= tolerance ? step : Math.sign(step) * tolerance);
    const fu = f(u);
    if (fu >= fx) {
      if (u < x) b = x;
      else a = x;
      [v, fv, w, fw, x, fx] = [w, fw, x, fx, u, fu];
    } else {
      if (u < x) a = u;
      else b = u;
      if (fu >= fw || w === x) [v, fv, w, fw] = [w, fw, u, fu];
      else if (fu >= fv || v === x || v === w) [v, fv] = [u, fu];
    }
  }
  return { at: x, value: fx };
}
