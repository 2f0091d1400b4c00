import { bracketedMaximum } from './bracketedMaximum.ts';
import { long, ONE, over, product, root, short, times } from './longFixed.ts';
import { type Pole, polesLoss } from './poles.ts';
import { polynomialRoots } from './polynomialRoots.ts';

/** How far below the least loss |S11| is made to vanish: so far apart its double zeros are worked. */
const APART = 1e-6;

/**
 * The ladder that has given poles and no zeros: g[0] = 1 for the source, g[1] … g[n], capacitors
 * and coils by turns, g[n+1] for the load.
 *
 * What is not passed comes back: |S11|² = 1 − |S21|². Of each pair of its zeros either may be taken.
 * All those to the left make the ladders of the published tables, very unlike at their two ends;
 * left and right by turns, in order of frequency, they make ladders of the same response that are
 * nearly symmetrical. Zin = (D + E)/(D − E) from the poles' polynomial D and the zeros' E is taken
 * apart as a continued fraction. At n = 12 that loses some twenty digits, so it is worked
 * with ninety; what comes out is right for the poles as given to the last digit of a double.
 *
 * The ends are equal and everything is passed at zero frequency; but where the loss has its least
 * elsewhere, everything is passed there, and the load differs.
 *
 * @param poles scaled as the elements are to be
 * @param zeros which of the zeros of reflection are taken
 * @source Matthaei, Young & Jones, Microwave Filters, 1964, sections 4.02 and 4.13; L. Weinberg,
 * Network Analysis and Synthesis, 1962, chapter 13
 */
export function ladderFromPoles(
  poles: readonly Pole[],
  zeros: 'left' | 'by turns' = 'left',
): number[] {
  const d = polynomialOf(poles);
  const e = reflectionPolynomial(d, leastLoss(poles), zeros === 'by turns');
  let top = d.map((one, k) => one + (e[k] ?? 0n));
  let bottom = d.map((one, k) => one - (e[k] ?? 0n)).slice(0, -1);
  const g = [1];
  for (let k = d.length - 1; k > 0; k -= 1) {
    const element = over(top[k] ?? 0n, bottom[k - 1] ?? 1n);
    g.push(short(element));
    const rest = top.map((one, i) => one - times(element, bottom[i - 1] ?? 0n));
    top = bottom;
    bottom = rest.slice(0, k);
  }
  // What is left is the load; as g it is counted the other way than the last element.
  g.push(short(over(top[0] ?? 0n, bottom[0] ?? 1n)));
  return g;
}

/** The least loss as a ratio of powers, if it is less than at zero frequency; else 1. */
function leastLoss(poles: readonly Pole[]): number {
  const edge = poles.at(-1)?.im ?? 1;
  let least = 1;
  let at = 0;
  for (let i = 1; i <= 400; i += 1) {
    const loss = polesLoss(poles, (edge * i) / 400);
    if (loss < least) [least, at] = [loss, (edge * i) / 400];
  }
  if (at === 0) return 1;
  const most = bracketedMaximum(
    (w) => -polesLoss(poles, w),
    at - edge / 400,
    at + edge / 400,
    1e-9,
  );
  return -most.value - APART;
}

/** Π (s + re ± j·im), coefficients from the constant upwards. */
function polynomialOf(poles: readonly Pole[]): bigint[] {
  return poles
    .map(({ re, im }) => {
      const [a, b] = [long(re), long(im)];
      return im === 0 ? [a, ONE] : [times(a, a) + times(b, b), 2n * a, ONE];
    })
    .reduce(product, [ONE]);
}

/**
 * E(s) with E(s)·E(−s) = D(s)·D(−s) − least·D(0)².
 *
 * @param least loss; 1 leaves a zero of E at zero frequency
 * @param turns whether its other zeros lie to the left and right by turns, or all to the left
 */
function reflectionPolynomial(d: readonly bigint[], least: number, turns: boolean): bigint[] {
  // In x = −s² the right side.
  const mirrored = product(
    d,
    d.map((one, k) => (k % 2 === 0 ? one : -one)),
  );
  const q = mirrored.filter((_, k) => k % 2 === 0).map((one, k) => (k % 2 === 0 ? one : -one));
  let e: bigint[] = [ONE];
  if (least === 1) {
    q.shift();
    e = [0n, ONE];
  } else q[0] = (q[0] ?? 0n) - times(q[0] ?? 0n, long(least));
  const { re, im } = polynomialRoots(q.map(short));
  const factors: { readonly at: number; readonly left: readonly bigint[] }[] = [];
  re.forEach((x, i) => {
    const y = im[i] as number;
    // Conjugates come in pairs, of which one is enough; a real root has rounding as its other part.
    const real = Math.abs(y) < 1e-9 * Math.abs(x);
    if (!real && y < 0) return;
    const [xr, xi] = polished(q, long(x), real ? 0n : long(y));
    const size = root(times(xr, xr) + times(xi, xi));
    const left = real ? [root(-xr), ONE] : [size, root(2n * (size - xr)), ONE];
    factors.push({ at: real ? 0 : short(size + xr), left });
  });
  factors.sort((one, other) => one.at - other.at);
  return factors.reduce((all, { left }, i) => {
    const right = left.map((c, k) => ((left.length - k) % 2 === 0 ? -c : c));
    return product(all, turns && i % 2 === 1 ? right : left);
  }, e);
}

/** A root with all its digits, by Newton's steps. */
function polished(q: readonly bigint[], re: bigint, im: bigint): [bigint, bigint] {
  let [zr, zi] = [re, im];
  for (let round = 0; round < 6; round += 1) {
    let [vr, vi, dr, di] = [0n, 0n, 0n, 0n];
    for (let k = q.length - 1; k >= 0; k -= 1) {
      [dr, di] = [times(dr, zr) - times(di, zi) + vr, times(dr, zi) + times(di, zr) + vi];
      [vr, vi] = [times(vr, zr) - times(vi, zi) + (q[k] ?? 0n), times(vr, zi) + times(vi, zr)];
    }
    const size = times(dr, dr) + times(di, di);
    zr -= over(times(vr, dr) + times(vi, di), size);
    zi -= over(times(vi, dr) - times(vr, di), size);
  }
  return [zr, zi];
}
