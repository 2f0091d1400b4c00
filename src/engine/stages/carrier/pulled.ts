import {
  loopSlope,
  negativeResistance,
  pulledFrequency,
  reactanceAt,
  resistanceAt,
} from '../../circuit/colpitts.ts';
import { trimming, trimmingWords } from '../../data/trimmers.ts';
import { nearest } from '../../quantity/preferred.ts';
import type { Oscillator } from './oscillator.ts';
import { seriesPart } from './seriesPart.ts';

/** How the oscillator gets to a frequency within its reach. */
export function pulled(f: number | null, coilQ: number, { x, parts, c, gm }: Oscillator) {
  if (f === null) {
    return {
      reactance: null,
      resistance: null,
      loadCapacitance: null,
      part: null,
      seriesC: null,
      seriesL: null,
      trimmer: null,
      stockC: null,
      stockL: null,
      stockFrequency: null,
      hzPerPf: null,
      hzPerStray: null,
      negativeResistance: null,
      startMargin: null,
    };
  }
  const omega = 2 * Math.PI * f;
  const reactance = reactanceAt(x, f);
  const resistance = resistanceAt(x, f);
  const part = seriesPart(f, reactance, c);
  const l = part.l ?? 0;
  const slope = loopSlope(x, f, l);
  const negative = negativeResistance(parts, f, gm);
  const stockC = part.c === null ? null : nearest(part.c, 'E24');
  const stockL = part.l === null ? null : nearest(part.l, 'E12');
  const load = stockC === null ? c : 1 / (1 / c + 1 / stockC);
  const set = part.c === null ? null : trimming(part.c);
  return {
    reactance,
    resistance,
    loadCapacitance: reactance > 0 ? 1 / (omega * reactance) : null,
    part: part.kind,
    seriesC: part.c,
    seriesL: part.l,
    trimmer: set === null ? null : trimmingWords(set),
    stockC,
    stockL,
    stockFrequency: part.kind === 'none' ? null : pulledFrequency(x, load, stockL ?? 0),
    hzPerPf: part.c === null ? null : 1 / (2 * Math.PI * f * part.c * part.c * slope),
    hzPerStray: 1 / (2 * Math.PI * f * c * c * slope),
    negativeResistance: negative,
    startMargin: -negative / (resistance + (omega * l) / coilQ),
  };
}
