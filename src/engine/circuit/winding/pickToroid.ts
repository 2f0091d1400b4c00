import { fluxGuide, peakFlux, thickestWire } from '../toroid.ts';
import { type ToroidCore, wholeTurns } from './toroidCoil.ts';

/** Thinnest wire over enamel that the choice of a core for a tuned coil puts up with, m. */
const THINNEST = 0.3e-3;

/**
 * The first of a row of cores, the one to try first at its beginning, that suits a tuned coil; the
 * last where none does.
 *
 * @param l inductance, H
 * @param frequency Hz
 * @param voltage across the coil, V rms; 0 for small signals
 */
export function pickToroid<C extends ToroidCore>(
  row: readonly C[],
  l: number,
  frequency: number,
  voltage: number,
): C | undefined {
  return row.find((core) => suitsToroid(core, l, frequency, voltage)) ?? row.at(-1);
}

/** Do the turns fit in one layer of wire of 0.3 mm, with the flux below its guideline? */
export function suitsToroid(
  { al, size }: ToroidCore,
  l: number,
  frequency: number,
  voltage: number,
): boolean {
  const turns = wholeTurns(l, al);
  return (
    thickestWire(size.inner, turns) >= THINNEST &&
    peakFlux(voltage, turns, size.area, frequency) <= fluxGuide(frequency)
  );
}
