import { bracketedRoot } from './bracketedRoot.ts';
import { denseSolve } from './denseSolve.ts';
import { type Pole, toHalfPower } from './poles.ts';

/**
 * Poles of the low-pass of linear phase with equal-ripple error, scaled to half power at 1 rad/s.
 *
 * The phase departs from a straight line by no more than `ripple` to either side as far up as n
 * poles can hold it: it touches the two limits n times by turns and leaves after the last. That is
 * as many conditions as poles; each of Newton's rounds looks up where the phase turns and moves the
 * poles so that it turns at the limits.
 *
 * The published tables, with 0.05° and 0.5° and up to 10 poles, obey it to their last digit; more
 * poles are the same definition carried on.
 *
 * @param n number of poles, 2 to 12
 * @param ripple rad, 0.05° to 0.5°
 * @source E. Ulbrich & H. Piloty, Über den Entwurf von Allpässen, Tiefpässen und Bandpässen mit
 * einer im Tschebyscheffschen Sinne approximierten konstanten Gruppenlaufzeit, AEÜ 14, 1960; tables
 * in A. I. Zverev, Handbook of Filter Synthesis, 1967
 */
export function linearPhasePoles(n: number, ripple: number): Pole[] {
  return toHalfPower(withUnitDelay(n, ripple));
}

/** A ripple so large that evenly spaced poles are near enough to begin with, rad. */
const FIRST_RIPPLE = 0.2;

/** The poles for a line of one radian for each rad/s: from a large ripple to the one asked for. */
function withUnitDelay(n: number, ripple: number): Pole[] {
  let poles = evenlySpaced(n);
  for (let now = FIRST_RIPPLE; now > ripple; now /= 2) poles = settled(poles, now, 1e-3);
  return settled(poles, ripple, 1e-13);
}

/** Poles π apart at a distance a from the axis have, were there no end to them, a ripple of exp(−2a). */
function evenlySpaced(n: number): Pole[] {
  const re = -Math.log(FIRST_RIPPLE) / 2;
  const odd = n % 2;
  const pairs = Array.from({ length: (n - odd) / 2 }, (_, k) => ({
    re,
    im: Math.PI * (k + (odd ? 1 : 0.5)),
  }));
  return odd ? [{ re, im: 0 }, ...pairs] : pairs;
}

/** Newton's rounds until no pole moves further than a tolerance. */
function settled(from: readonly Pole[], ripple: number, tolerance: number): Pole[] {
  let poles = [...from];
  for (let round = 0; round < 50; round += 1) {
    const step = newtonStep(poles, turningPoints(poles), ripple);
    const most = Math.max(...step.map(({ re, im }) => Math.hypot(re, im)));
    // A long step is cut short: far from the goal the turns would be lost.
    const part = Math.min(1, 0.3 / most);
    poles = poles.map(({ re, im }, i) => ({
      re: re + part * (step[i]?.re ?? 0),
      im: im + part * (step[i]?.im ?? 0),
    }));
    if (most < tolerance) break;
  }
  return poles;
}

/** Slope of the phase of the poles, rad per rad/s. */
function delayAt(poles: readonly Pole[], omega: number): number {
  let delay = 0;
  for (const { re, im } of poles) {
    delay += re / (re * re + (omega - im) ** 2);
    if (im > 0) delay += re / (re * re + (omega + im) ** 2);
  }
  return delay;
}

/** The first n frequencies at which phase and line run parallel, rad/s. */
function turningPoints(poles: readonly Pole[]): number[] {
  const n = poles.reduce((sum, { im }) => sum + (im > 0 ? 2 : 1), 0);
  const off = (omega: number) => delayAt(poles, omega) - 1;
  const at: number[] = [];
  const last = (poles.at(-1)?.im ?? 0) + 4;
  const step = 0.05;
  for (let omega = step; omega < last && at.length < n; omega += step) {
    if (off(omega - step) > 0 !== off(omega) > 0) {
      at.push(bracketedRoot(off, omega - step, omega, 1e-13));
    }
  }
  return at;
}

/** How far to move each pole so that the phase is at its limits where it turns. */
function newtonStep(poles: readonly Pole[], at: readonly number[], ripple: number): Pole[] {
  const n = poles.reduce((sum, { im }) => sum + (im > 0 ? 2 : 1), 0);
  if (at.length < n) throw new Error(`${at.length} turns of the phase of ${n} poles`);
  const slopes = new Float64Array(n * n);
  const off = new Float64Array(n);
  at.forEach((omega, j) => {
    let phase = 0;
    let column = j * n;
    for (const { re, im } of poles) {
      const [up, down] = [omega - im, omega + im];
      phase += Math.atan2(up, re);
      slopes[column] = -up / (re * re + up * up);
      if (im > 0) {
        phase += Math.atan2(down, re);
        slopes[column] = (slopes[column] as number) - down / (re * re + down * down);
        slopes[column + 1] = re / (re * re + down * down) - re / (re * re + up * up);
        column += 1;
      }
      column += 1;
    }
    // The last touch is above the line.
    const goal = (n - 1 - j) % 2 === 0 ? ripple : -ripple;
    off[j] = goal - (phase - omega);
  });
  denseSolve(slopes, off, off.length);
  let i = 0;
  return poles.map(({ im }) => {
    const re = off[i] ?? 0;
    i += 1;
    if (im === 0) return { re, im: 0 };
    i += 1;
    return { re, im: off[i - 1] ?? 0 };
  });
}
