import { bracketedRoot } from './bracketedRoot.ts';
import { loadThrough } from './crystalFromShift.ts';

/** Three readings of one oscillator. Hz, F. */
export interface ThirdReading {
  readonly first: number;
  /** Capacitor in series with the crystal at the first reading; null for none. */
  readonly firstSeries: number | null;
  readonly second: number;
  readonly secondSeries: number;
  /** As the first, with a known capacitor across the oscillator's terminals. */
  readonly third: number;
  readonly across: number;
  readonly c0: number;
}

/** Least and greatest capacitance of an oscillator that is looked for, F. */
const LEAST = 0.5e-12;
const GREATEST = 5e-9;

/**
 * An oscillator's own capacitance from a third reading, with a known capacitor across its terminals.
 *
 * The shift that the series capacitor makes over the shift that the other makes does not depend on
 * the crystal's motional arm: (f2² − f1²)/(f1² − f3²) = (s2 − s1)/(s1 − s3) with s = 1/(C0 + C_L).
 * A capacitor across the terminals is far better conditioned than a third one in series.
 *
 * @return F; null where no capacitance between 0.5 pF and 5 nF makes the readings agree
 * Source: closed form of the equivalent circuit, IEC 60122-1.
 */
export function oscillatorFromThird(readings: ThirdReading): number | null {
  const { first, second, third } = readings;
  const shifts = ((second - first) * (second + first)) / ((first - third) * (first + third));
  if (!(shifts > 0)) return null;
  const off = (log: number) => elastances(readings, Math.exp(log)) / shifts - 1;
  const [a, b] = [Math.log(LEAST), Math.log(GREATEST)];
  const [fa, fb] = [off(a), off(b)];
  if (fa > 0 === fb > 0) return null;
  return Math.exp(bracketedRoot(off, a, b, 1e-15, fa, fb));
}

function elastances(
  { firstSeries, secondSeries, across, c0 }: ThirdReading,
  oscillator: number,
): number {
  const s = (own: number, series: number | null) => 1 / (c0 + loadThrough(own, series));
  const s1 = s(oscillator, firstSeries);
  return (s(oscillator, secondSeries) - s1) / (s1 - s(oscillator + across, firstSeries));
}
