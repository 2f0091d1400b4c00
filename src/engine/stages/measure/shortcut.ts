import { crystalFromPairShort } from '../../circuit/crystalFromPair.ts';
import { crystalFromShiftShort } from '../../circuit/crystalFromShift.ts';
import { crystalInFixtureShort } from '../../circuit/crystalInFixture.ts';
import { endOf, holderOf } from './readings.ts';
import type { MeasureSeen } from './seen.ts';

/** What the first-order formula says. Hz, H, F, Ω. */
export interface Shortcut {
  readonly fs: number;
  readonly lm: number;
  readonly cm: number;
  readonly rm: number | null;
}

/** The usual shortcut from the readings that it needs, which are fewer. */
export function shortcut(seen: MeasureSeen): Shortcut | null {
  if (seen.method === 'fixture') {
    const { peak, peakLoss: loss, width } = seen;
    if (peak === null || loss === null || width === null || loss <= 0) return null;
    return crystalInFixtureShort({ peak, loss, width, end: endOf(seen) });
  }
  if (seen.method === 'shift') {
    const { first, second, secondSeries, firstWith } = seen;
    const firstSeries = firstWith === 'direct' ? null : seen.firstSeries;
    if (first === null || second === null || secondSeries === null) return null;
    if (firstWith === 'series' && firstSeries === null) return null;
    if (firstSeries === secondSeries) return null;
    const arm = crystalFromShiftShort(first, firstSeries, second, secondSeries);
    return arm === null ? null : { ...arm, rm: null };
  }
  const c0 = holderOf(seen);
  const { series, parallel } = seen;
  if (seen.method !== 'pair' || c0 === null || c0 <= 0) return null;
  if (series === null || parallel === null) return null;
  const arm = crystalFromPairShort(series, parallel, c0);
  return arm === null ? null : { ...arm, rm: null };
}
