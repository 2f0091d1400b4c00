import { wheelerCoil } from '../../circuit/airCoil.ts';
import { airCoilOf } from '../../circuit/winding/airCoilOf.ts';
import { format } from '../../quantity/format.ts';
import { coilsWanted } from './coilRows.ts';
import type { WindingsSeen } from './seen.ts';

/** Every coil as it would be without a core: turns, length, Q. */
export function airRows(seen: WindingsSeen) {
  const { former, airWire, airPitch, nominal, tail } = seen;
  const form = { former, wire: airWire, spacing: airPitch };
  return coilsWanted(seen).map(({ label, l }) => {
    const coil = airCoilOf(l, form, tail, nominal);
    return {
      label,
      l,
      turns: coil.turns,
      length: coil.long,
      lorenz: coil.l,
      wheeler: wheelerCoil(coil.turns, coil.diameter, coil.long),
      wire: coil.length,
      resistance: coil.resistance,
      q: coil.q,
      selfCapacitance: coil.selfCapacitance,
      resonance: coil.resonance,
      build: `${format(coil.turns, '1', 3)} turns over ${format(coil.long, 'm', 2)} on ${format(former, 'm', 2)}, cut ${format(coil.length, 'm', 2)}`,
    };
  });
}
