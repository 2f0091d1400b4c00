import { turnsFor, wireLength } from '../toroid.ts';
import { toroidCapacitance } from '../toroidCapacitance.ts';
import { proximityRise, skinRise, wireResistance } from '../wireLoss.ts';

/** Share of a toroid's circumference that a winding is spread over. */
export const SPREAD = 11 / 12;

/** What has to be known of a toroid to wind a tuned coil on it. */
export interface ToroidCore {
  /** Inductance of one turn, H. */
  readonly al: number;
  /** Quality factor of the core alone; null where it is not known. */
  readonly coreQ: number | null;
  /** Diameters and height, m; cross section, m². */
  readonly size: {
    readonly outer: number;
    readonly inner: number;
    readonly height: number;
    readonly area: number;
  };
}

/** Enamelled wire: copper, and over the enamel, m. */
export interface WireSize {
  readonly bare: number;
  readonly overall: number;
}

/** A coil as it comes out of whole turns, on a core or on air. */
export interface ToroidCoil {
  readonly turns: number;
  /** H; on a core A_L·N². */
  readonly l: number;
  /** Wire, tails included, m. */
  readonly length: number;
  /** For direct current, Ω. */
  readonly resistanceDc: number;
  /** At the frequency, skin effect and neighbours included, Ω. */
  readonly resistance: number;
  readonly q: number;
  /** F */
  readonly selfCapacitance: number;
  /** Where inductance and self-capacitance resonate, Hz. */
  readonly resonance: number;
}

/** Whole turns that come nearest to an inductance, H, on a core with A_L, H. */
export const wholeTurns = (l: number, al: number): number =>
  Math.max(1, Math.round(turnsFor(l, al)));

/**
 * A single-layer coil of whole turns on a toroid, spread over all of it but 30°.
 *
 * @param turns whole turns
 * @param wire bare diameter and diameter over the enamel, m
 * @param tail length left at each end, m
 * @param frequency at which the Q is meant, Hz
 */
export function toroidCoil(
  turns: number,
  core: ToroidCore,
  wire: WireSize,
  tail: number,
  frequency: number,
): ToroidCoil {
  const { size, al, coreQ } = core;
  const length = wireLength(size, wire.overall, turns, tail);
  const mean = (Math.PI * (size.outer + size.inner)) / 2;
  const pitchShare = Math.min(1, (turns * wire.bare) / (mean * SPREAD));
  const resistanceDc = wireResistance(length, wire.bare);
  const resistance = resistanceDc * skinRise(wire.bare, frequency) * proximityRise(pitchShare);
  const l = al * turns ** 2;
  const selfCapacitance = toroidCapacitance(
    wireLength(size, wire.overall, 1, 0),
    wire.bare,
    wire.overall,
  );
  return {
    turns,
    l,
    length,
    resistanceDc,
    resistance,
    q: 1 / (resistance / (2 * Math.PI * frequency * l) + 1 / (coreQ ?? Number.POSITIVE_INFINITY)),
    selfCapacitance,
    resonance: 1 / (2 * Math.PI * Math.sqrt(l * selfCapacitance)),
  };
}
