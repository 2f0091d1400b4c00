import { airCoil } from '../airCoil.ts';
import { skinRise, wireResistance } from '../wireLoss.ts';
import { airCapacitance, medhurstRise } from './medhurst.ts';
import type { ToroidCoil, WireSize } from './toroidCoil.ts';

/** How a coil on air is wound. */
export interface AirForm {
  /** Outer diameter of what it is wound on, m. */
  readonly former: number;
  /** From turn to turn, m. */
  readonly pitch: number;
}

/** A single-layer coil on air. */
export interface AirCoil extends ToroidCoil {
  /** From wire centre to wire centre, m. */
  readonly diameter: number;
  /** Along its axis, m. */
  readonly long: number;
  /** Turns that would meet the inductance exactly. */
  readonly turnsExact: number;
}

/** So much of a turn more than whole is left off; beyond it a whole turn is added and stretched out. */
export const LEFT_OFF = 0.25;

/**
 * A coil on air: whole turns at a given pitch, rather one too many, as it can be stretched.
 *
 * @param l wanted inductance, H
 * @param wire bare diameter and diameter over the enamel, m
 * @param tail length left at each end, m
 * @param frequency at which the Q is meant, Hz
 */
export function airCoilOf(
  l: number,
  { former, pitch }: AirForm,
  wire: WireSize,
  tail: number,
  frequency: number,
): AirCoil {
  const diameter = former + wire.overall;
  const turnsExact = airTurns(l, diameter, pitch);
  const turns = Math.max(1, Math.ceil(turnsExact - LEFT_OFF));
  const long = turns * pitch;
  const lAt = airCoil(turns, diameter, long);
  const length = turns * Math.hypot(Math.PI * diameter, pitch) + 2 * tail;
  const resistanceDc = wireResistance(length, wire.bare);
  const resistance =
    resistanceDc *
    skinRise(wire.bare, frequency) *
    medhurstRise(wire.bare / pitch, long / diameter);
  const selfCapacitance = airCapacitance(diameter, long);
  return {
    turns,
    turnsExact,
    diameter,
    long,
    l: lAt,
    length,
    resistanceDc,
    resistance,
    q: (2 * Math.PI * frequency * lAt) / resistance,
    selfCapacitance,
    resonance: 1 / (2 * Math.PI * Math.sqrt(lAt * selfCapacitance)),
  };
}

/**
 * Turns at a pitch for an inductance, not rounded: the inductance goes as a power of the turns
 * between one and two, so that few steps suffice.
 */
function airTurns(l: number, diameter: number, pitch: number): number {
  const at = (x: number) => Math.log(airCoil(Math.exp(x), diameter, Math.exp(x) * pitch) / l);
  let [x0, x1] = [Math.log(3), Math.log(10)];
  let [y0, y1] = [at(x0), at(x1)];
  for (let i = 0; i < 40 && Math.abs(y1) > 1e-14 && y1 !== y0; i += 1) {
    const next = Math.min(20, Math.max(-7, x1 - (y1 * (x1 - x0)) / (y1 - y0)));
    [x0, y0] = [x1, y1];
    x1 = next;
    y1 = at(x1);
  }
  return Math.exp(x1);
}
