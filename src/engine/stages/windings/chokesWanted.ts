import type { WindingsSeen } from './seen.ts';
import { isPushPull } from './transformersWanted.ts';

/** A choke that the rig needs. */
export interface ChokeWanted {
  readonly label: string;
  readonly does: string;
  /** What it lies across, Ω. */
  readonly resistance: number;
  /** Direct current through it, A. */
  readonly direct: number;
  /** What the resistance takes at full power, W; null where the signal is small. */
  readonly power: number | null;
}

/** Current gain that the current through the base choke is reckoned with: a weak final. */
export const WEAK_GAIN = 20;

/** Circuit that the supply choke keeps radio frequency from, Ω. */
export const LINE = 50;

/** Chokes of the final and of the supply line. */
export function chokesWanted(seen: WindingsSeen): ChokeWanted[] {
  const { collectorLoad, collectorPower, dcCurrent, finalInput } = seen;
  const list: ChokeWanted[] = [];
  if (collectorLoad !== null && collectorPower !== null && dcCurrent !== null) {
    const sides = isPushPull(seen) ? 2 : 1;
    // In push-pull the supply comes to the transformer's centre tap, where both sides cancel.
    if (sides === 1 || seen.transformerRatio === null) {
      list.push({
        label: 'Collector choke',
        does:
          sides === 1
            ? 'Feeds the final and keeps its radio frequency out of the supply.'
            : 'Two alike: each feeds one side of the final and keeps its radio frequency out of the supply.',
        resistance: collectorLoad / sides ** 2,
        direct: dcCurrent / sides,
        power: collectorPower,
      });
    }
    // In push-pull the bias comes to the centre tap of the driver's transformer.
    if (sides === 1) {
      list.push({
        label: 'Base choke',
        does: 'Feeds the base of the final with its bias; without one, a resistor does.',
        resistance: finalInput,
        direct: dcCurrent / WEAK_GAIN,
        power: null,
      });
    }
  }
  list.push({
    label: 'Supply choke',
    does: 'Keeps what the final leaves on the supply away from the small stages, with 100 nF at each end.',
    resistance: LINE,
    direct: seen.chokeFeed,
    power: null,
  });
  return list;
}
