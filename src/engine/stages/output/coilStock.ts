import { thickestWire } from '../../circuit/toroid.ts';
import { pickToroid } from '../../circuit/winding/pickToroid.ts';
import { type ToroidCoil, toroidCoil, wholeTurns } from '../../circuit/winding/toroidCoil.ts';
import type { Core } from '../../data/cores.ts';
import type { Wire } from '../../data/wires.ts';
import type { OutputSeen } from './seen.ts';

/** Cores and wire to choose from. */
export type Stock = NonNullable<OutputSeen['shelf']>;

/** A coil as it would be wound. */
export interface Wound extends ToroidCoil {
  readonly core: Core;
  readonly wire: Wire;
}

/**
 * How a tuned coil comes out of whole turns: the smallest toroid that suffices, the thickest wire that
 * fits in one layer.
 *
 * @param l inductance, H
 * @param frequency Hz
 * @param voltage across it at full power, about, V rms
 * @param stock what there is; null where nothing is there
 */
export function wind(
  l: number,
  frequency: number,
  voltage: number,
  stock: Stock | null,
): Wound | null {
  const core = stock === null ? undefined : pickToroid(stock.row, l, frequency, voltage);
  if (stock === null || core === undefined) return null;
  const turns = wholeTurns(l, core.al);
  const room = thickestWire(core.size.inner, turns);
  const fitting = stock.wires.filter(({ overall }) => overall <= room);
  const wire = fitting.at(-1) ?? stock.wires[0];
  return wire === undefined
    ? null
    : { ...toroidCoil(turns, core, wire, stock.tail, frequency), core, wire };
}
