import type { MeasureSeen } from './seen.ts';

/** How far down the width of a peak is taken, dB. */
export const DROP = 3;

/** A full set of readings. Hz, dB, Ω, F. */
export type Readings =
  | {
      readonly by: 'fixture';
      readonly peak: number;
      readonly loss: number;
      readonly drop: number;
      readonly width: number;
      readonly end: number;
      readonly c0: number;
      readonly beside: number;
    }
  | {
      readonly by: 'shift';
      readonly first: number;
      readonly firstSeries: number | null;
      readonly second: number;
      readonly secondSeries: number;
      readonly c0: number;
      /** Known or from the feedback capacitors; else the third reading has to give it. */
      readonly oscillator: number | null;
      readonly third: number | null;
      readonly across: number | null;
    }
  | {
      readonly by: 'pair';
      readonly series: number;
      readonly parallel: number;
      readonly c0: number;
      readonly beside: number;
    };

/** The readings of the way chosen, or null as long as one of them is missing. */
export function readingsOf(seen: MeasureSeen): Readings | null {
  const c0 = holderOf(seen);
  if (c0 === null || c0 <= 0) return null;
  if (seen.method === 'fixture') {
    const { peak, peakLoss: loss, width, beside } = seen;
    if (peak === null || loss === null || width === null) return null;
    return { by: 'fixture', peak, loss, drop: DROP, width, end: endOf(seen), c0, beside };
  }
  if (seen.method === 'shift') {
    const { first, second, secondSeries } = seen;
    const firstSeries = seen.firstWith === 'direct' ? null : seen.firstSeries;
    if (first === null || second === null || secondSeries === null) return null;
    if (firstSeries === null && seen.firstWith === 'series') return null;
    const byThird = seen.oscillatorBy === 'third';
    const oscillator = oscillatorOf(seen);
    const third = byThird ? seen.third : null;
    const across = byThird ? seen.across : null;
    if (byThird ? third === null || across === null : oscillator === null) return null;
    return { by: 'shift', first, firstSeries, second, secondSeries, c0, oscillator, third, across };
  }
  if (seen.method === 'pair') {
    const { series, parallel, beside } = seen;
    return series === null || parallel === null
      ? null
      : { by: 'pair', series, parallel, c0, beside };
  }
  return null;
}

/** Capacitance of the holder, F: the reading less what the meter shows without. */
export const holderOf = ({ c0Read, meterStray }: MeasureSeen): number | null =>
  c0Read === null ? null : c0Read - (meterStray ?? 0);

/** Resistance at either end of the jig, Ω. */
export const endOf = ({ jig, jigOwn }: MeasureSeen): number =>
  jig === 'pi' ? 12.5 : jig === 'fifty' ? 50 : jigOwn;

/** Capacitance of the oscillator where it needs no third reading, F. */
export function oscillatorOf(seen: MeasureSeen): number | null {
  const { oscillatorBy, oscillatorOwn, feedbackUpper: a, feedbackLower: b, oscillatorStray } = seen;
  if (oscillatorBy === 'typed') return oscillatorOwn;
  if (oscillatorBy === 'third') return null;
  return (a * b) / (a + b) + oscillatorStray;
}
