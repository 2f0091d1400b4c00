import { bracketedRoot } from './bracketedRoot.ts';
import { type Pole, polesOf, toHalfPower } from './poles.ts';
import { polynomialRoots } from './polynomialRoots.ts';

/** How far the loss may depart from the Gaussian's, from one limit to the other, dB. */
const RIPPLE = 0.1;

/** Down to here the Gaussian is followed, dB: half the voltage. */
const DOWN = 20 * Math.log10(2);

/** Decibels in a neper of power. */
const DB = 10 / Math.LN10;

/**
 * Poles of the low-pass that is Gaussian to 6 dB, scaled to half power at 1 rad/s.
 *
 * Its loss follows a parabola c·ω² in dB, the Gaussian's, with an error that swings between the
 * limits 0 and 0.1 dB (−0.1 dB for even n) by turns: it starts at the one, touches n − 1 times, and
 * is half-way between them where the loss is 6.02 dB; beyond it falls as fast as n poles can. The
 * loss as a ratio of powers is a polynomial in ω², found by exchange of the points of touch.
 *
 * The definition was read off the published tables (n 3 to 10), which it gives to their last digit;
 * 2, 11 and 12 poles are the same definition carried on. Two poles overstep the limit 0 by 0.06 dB.
 *
 * @param n number of poles, 2 to 12
 * @source tables of transitional filters, Gaussian to 6 dB: A. I. Zverev, Handbook of Filter
 * Synthesis, 1967; Linear Circuit Design Handbook, Analog Devices, 2008, chapter 8
 */
export function gaussianPoles(n: number): Pole[] {
  const swing = n % 2 === 1 ? RIPPLE : -RIPPLE;
  // In y = ω² over that of the end: the end of the band is known, the points of touch move.
  const end = DOWN - swing / 2;
  const at = Array.from({ length: n + 1 }, (_, j) => (1 - Math.cos((Math.PI * j) / n)) / 2);
  const goals = at.map((_, j) => (j === n ? swing / 2 : j % 2 === 1 ? swing : 0));
  let loss: number[] = [];
  for (let round = 0; round < 50; round += 1) {
    loss = throughPoints(
      at,
      at.map((y, j) => 10 ** ((end * y + (goals[j] ?? 0)) / 10)),
    );
    if (exchange(loss, at, end) < 1e-12) break;
  }
  const { re, im } = polynomialRoots(loss);
  // Of s = ±√(−y) the one to the left.
  const left = { re: new Float64Array(n), im: new Float64Array(n) };
  for (let i = 0; i < n; i += 1) {
    const [x, y] = [-(re[i] as number), -(im[i] as number)];
    const size = Math.hypot(x, y);
    left.re[i] = -Math.sqrt((size + x) / 2);
    left.im[i] = Math.sign(y) * Math.sqrt(Math.max(0, (size - x) / 2));
  }
  return toHalfPower(polesOf(left));
}

/** The polynomial through points, coefficients from the constant upwards: Newton's divided differences. */
function throughPoints(at: readonly number[], values: readonly number[]): number[] {
  const n = at.length - 1;
  const d = [...values];
  for (let k = 1; k <= n; k += 1) {
    for (let j = n; j >= k; j -= 1) {
      d[j] = ((d[j] ?? 0) - (d[j - 1] ?? 0)) / ((at[j] ?? 0) - (at[j - k] ?? 0));
    }
  }
  let p = [d[n] ?? 0];
  for (let k = n - 1; k >= 0; k -= 1) {
    const next = [0, ...p];
    p.forEach((c, i) => {
      next[i] = (next[i] ?? 0) - (at[k] ?? 0) * c;
    });
    next[0] = (next[0] ?? 0) + (d[k] ?? 0);
    p = next;
  }
  return p;
}

/** Moves each inner point to where the error turns next to it; answers the longest move. */
function exchange(loss: readonly number[], at: number[], end: number): number {
  // 10·log10 P − end·y turns where its slope is zero.
  const slope = (y: number) => {
    let [p, dp] = [0, 0];
    for (let k = loss.length - 1; k >= 0; k -= 1) {
      dp = dp * y + p;
      p = p * y + (loss[k] ?? 0);
    }
    return DB * dp - end * p;
  };
  const before = [...at];
  const half = (i: number) => ((before[i] ?? 0) + (before[i + 1] ?? 0)) / 2;
  let most = 0;
  for (let j = 1; j + 1 < at.length; j += 1) {
    at[j] = bracketedRoot(slope, half(j - 1), half(j), 1e-16);
    most = Math.max(most, Math.abs((at[j] ?? 0) - (before[j] ?? 0)));
  }
  return most;
}
