import { type BiasResistors, biasPoint } from './biasPoint.ts';
import { cardAt, type TransistorCard } from './transistorCard.ts';

/** How far a stage's collector current wanders, A. */
export interface BiasSpread {
  readonly least: number;
  readonly most: number;
  /** A corner brings the stage into saturation. */
  readonly saturates: boolean;
}

/**
 * Least and greatest collector current over the corners of current gain and temperature.
 *
 * @param card at its own temperature, with any current gain
 * @param gains least and greatest current gain of its kind, 1
 * @param temperatures coldest and hottest junction, K
 */
export function biasSpread(
  resistors: BiasResistors,
  card: TransistorCard,
  gains: readonly [number, number],
  temperatures: readonly [number, number],
): BiasSpread {
  let least = Number.POSITIVE_INFINITY;
  let most = 0;
  let saturates = false;
  for (const bf of gains) {
    for (const temperature of temperatures) {
      const point = biasPoint(resistors, cardAt({ ...card, bf }, temperature), temperature);
      least = Math.min(least, point.collectorCurrent);
      most = Math.max(most, point.collectorCurrent);
      saturates ||= point.saturated;
    }
  }
  return { least, most, saturates };
}
