import { airCoil, airCoilTurns, wheelerCoil } from '../../circuit/airCoil.ts';
import { proximityRise, skinRise, wireResistance } from '../../circuit/wireLoss.ts';
import { format } from '../../quantity/format.ts';
import { coilsWanted } from './coilRows.ts';
import type { WindingsSeen } from './seen.ts';

/** Self-capacitance of a single layer as long as it is wide, F for each metre of diameter. */
export const MEDHURST = 46e-12;

/** Every coil as it would be without a core: turns, length, Q. */
export function airRows(seen: WindingsSeen) {
  const { former, airWire, airPitch, nominal, tail } = seen;
  // The wire's middle runs half a wire outside the former.
  const diameter = former + airWire;
  const pitch = airWire * airPitch;
  return coilsWanted(seen).map(({ label, l }) => {
    const turns = airCoilTurns(l, diameter, pitch);
    const length = turns * pitch;
    const wire = turns * Math.hypot(Math.PI * diameter, pitch) + 2 * tail;
    const resistance =
      wireResistance(wire, airWire) * skinRise(airWire, nominal) * proximityRise(1 / airPitch);
    const selfCapacitance = MEDHURST * diameter;
    return {
      label,
      l,
      turns,
      length,
      lorenz: airCoil(turns, diameter, length),
      wheeler: wheelerCoil(turns, diameter, length),
      wire,
      resistance,
      q: (2 * Math.PI * nominal * l) / resistance,
      selfCapacitance,
      resonance: 1 / (2 * Math.PI * Math.sqrt(l * selfCapacitance)),
      build: `${format(turns, '1', 3)} turns over ${format(length, 'm', 2)} on ${format(former, 'm', 2)}, cut ${format(wire, 'm', 2)}`,
    };
  });
}
