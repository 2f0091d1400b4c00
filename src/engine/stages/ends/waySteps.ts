import { lMatch } from '../../circuit/matching/lMatch.ts';
import { minimumLossPad } from '../../circuit/matching/minimumLossPad.ts';
import type { Step } from '../../circuit/matching/seenThrough.ts';
import { turnsRatio } from '../../circuit/turnsRatio.ts';
import type { ways } from './sideInputs.ts';

export type WayKey = keyof typeof ways;

/** What is to be matched: the resistance it is worked for, the one wanted, and where. Ω, Hz. */
interface Match {
  readonly wound: number;
  readonly wants: number;
  readonly centre: number;
}

/** The parts of a way, from the device outwards. */
export function waySteps({ wound, wants, centre }: Match, way: WayKey): readonly Step[] {
  if (way === 'straight' || wound === wants) return [];
  const up = wants > wound;
  if (way === 'transformer') {
    return [{ place: 'transformer', ratio: turnsRatio(wants / wound, false).ratio }];
  }
  if (way === 'resistor') {
    return up
      ? [{ place: 'series', r: wants - wound, x: 0 }]
      : [{ place: 'across', g: (wound - wants) / (wound * wants), b: 0 }];
  }
  if (way === 'pad') {
    const pad = minimumLossPad(wound, wants);
    if (pad === null) return [];
    const series: Step = { place: 'series', r: pad.series, x: 0 };
    const across: Step = { place: 'across', g: 1 / pad.shunt, b: 0 };
    return up ? [across, series] : [series, across];
  }
  const match = lMatch(wound, wants, centre);
  if (match === null) return [];
  const sign = way === 'lowpass' ? 1 : -1;
  const series: Step = { place: 'series', r: 0, x: sign * match.seriesX };
  const across: Step = { place: 'across', g: 0, b: sign / match.shuntX };
  return up ? [series, across] : [across, series];
}
