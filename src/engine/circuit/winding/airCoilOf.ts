import { airCoil } from '../airCoil.ts';
import { skinRise, wireResistance } from '../wireLoss.ts';
import { airCapacitance, medhurstRise } from './medhurst.ts';
import type { ToroidCoil } from './toroidCoil.ts';

/** How a coil on air is wound. */
export interface AirForm {
  /** Outer diameter of what it is wound on, m. */
  readonly former: number;
  /** Diameter of the wire, m. */
  readonly wire: number;
  /** From middle to middle of neighbouring turns over the wire's diameter. */
  readonly spacing: number;
}

/** A single-layer coil on air. Parts of a turn count. */
export interface AirCoil extends ToroidCoil {
  /** From wire centre to wire centre, m. */
  readonly diameter: number;
  /** Along its axis, m. */
  readonly long: number;
}

/**
 * A coil on air at a given spacing, with so many turns, parts of one too, that the inductance is met.
 *
 * @param l wanted inductance, H
 * @param tail length left at each end, m
 * @param frequency at which the Q is meant, Hz
 */
export function airCoilOf(
  l: number,
  { former, wire, spacing }: AirForm,
  tail: number,
  frequency: number,
): AirCoil {
  const diameter = former + wire;
  const pitch = wire * spacing;
  const turns = airTurns(l, diameter, pitch);
  const long = turns * pitch;
  const length = turns * Math.hypot(Math.PI * diameter, pitch) + 2 * tail;
  const resistanceDc = wireResistance(length, wire);
  const resistance =
    resistanceDc * skinRise(wire, frequency) * medhurstRise(1 / spacing, long / diameter);
  const selfCapacitance = airCapacitance(diameter, long);
  return {
    turns,
    diameter,
    long,
    l: airCoil(turns, diameter, long),
    length,
    resistanceDc,
    resistance,
    q: (2 * Math.PI * frequency * l) / resistance,
    selfCapacitance,
    resonance: 1 / (2 * Math.PI * Math.sqrt(l * selfCapacitance)),
  };
}

/**
 * Turns at a pitch for an inductance, not rounded: the inductance goes as a power of the turns
 * between one and two, so that few steps of a secant suffice.
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
