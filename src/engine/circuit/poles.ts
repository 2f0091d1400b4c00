import { bracketedRoot } from './bracketedRoot.ts';
import type { Roots } from './polynomialRoots.ts';

/**
 * A pole of a low-pass, −re ± j·im: re above zero; im above zero stands for the pair, zero for a
 * real pole. rad/s, normalised.
 */
export interface Pole {
  readonly re: number;
  readonly im: number;
}

/** Poles from the roots of a polynomial whose roots all lie to the left: one for each pair. */
export function polesOf({ re, im }: Roots): Pole[] {
  const found: Pole[] = [];
  for (let i = 0; i < re.length; i += 1) {
    const [x, y] = [re[i] as number, im[i] as number];
    // A real root comes out with an imaginary part of rounding.
    if (Math.abs(y) < 1e-9 * Math.abs(x)) found.push({ re: -x, im: 0 });
    else if (y > 0) found.push({ re: -x, im: y });
  }
  return found.sort((a, b) => a.im - b.im);
}

/**
 * Square of the loss of an all-pole low-pass, as a plain ratio of powers: 1 at zero frequency.
 *
 * @param omega rad/s
 */
export function polesLoss(poles: readonly Pole[], omega: number): number {
  let loss = 1;
  for (const { re, im } of poles) {
    if (im === 0) loss *= 1 + (omega / re) ** 2;
    else {
      const size = re * re + im * im;
      loss *= ((size - omega * omega) ** 2 + (2 * re * omega) ** 2) / (size * size);
    }
  }
  return loss;
}

/** The same poles scaled so that the response is down to half power at 1 rad/s. */
export function toHalfPower(poles: readonly Pole[]): Pole[] {
  const over = (omega: number) => Math.log(polesLoss(poles, omega) / 2);
  let high = 1;
  while (over(high) < 0) high *= 2;
  let low = high;
  while (over(low) > 0) low /= 2;
  const edge = bracketedRoot(over, low, high, high * 1e-16);
  return poles.map(({ re, im }) => ({ re: re / edge, im: im / edge }));
}
