import { crystalFromPair } from '../../circuit/crystalFromPair.ts';
import { crystalFromShift, loadThrough } from '../../circuit/crystalFromShift.ts';
import { crystalInFixture } from '../../circuit/crystalInFixture.ts';
import { oscillatorFromThird } from '../../circuit/oscillatorFromThird.ts';
import type { Readings } from './readings.ts';

/** A crystal as found. Hz, H, F, Ω; null where the way of measuring does not tell. */
export interface Found {
  readonly fs: number;
  readonly lm: number;
  readonly cm: number;
  readonly rm: number | null;
  readonly qu: number | null;
  /** The oscillator's capacitance, F, where there was one. */
  readonly oscillator: number | null;
}

/** What no crystal can read. */
export type Misfit = 'loss' | 'drop' | 'order' | 'third' | 'load' | 'parallel';

/** The crystal of a full set of readings, or what is wrong with them. */
export function solve(readings: Readings): Found | Misfit {
  if (readings.by === 'fixture') {
    if (readings.loss <= 0) return 'loss';
    const arm = crystalInFixture({ ...readings, shunt: readings.c0 + readings.beside });
    if (typeof arm === 'string') return arm;
    return { ...arm, qu: (2 * Math.PI * arm.fs * arm.lm) / arm.rm, oscillator: null };
  }
  if (readings.by === 'pair') {
    const { series, parallel, c0, beside } = readings;
    const arm = crystalFromPair(series, parallel, c0 + beside);
    return arm === null ? 'parallel' : { ...arm, rm: null, qu: null, oscillator: null };
  }
  const { first, firstSeries, second, secondSeries, c0, third, across } = readings;
  if (rises(readings) <= 0) return 'order';
  const oscillator =
    third === null || across === null
      ? readings.oscillator
      : oscillatorFromThird({ ...readings, third, across });
  if (oscillator === null) return 'third';
  const arm = crystalFromShift({
    first,
    firstLoad: loadThrough(oscillator, firstSeries),
    second,
    secondLoad: loadThrough(oscillator, secondSeries),
    c0,
  });
  return arm === null ? 'load' : { ...arm, rm: null, qu: null, oscillator };
}

/** Above zero where the reading with the smaller series capacitor is the higher. */
function rises({
  first,
  firstSeries,
  second,
  secondSeries,
}: Extract<Readings, { by: 'shift' }>): number {
  const smaller = firstSeries === null ? 1 : firstSeries - secondSeries;
  return Math.sign(smaller) * (second - first);
}
