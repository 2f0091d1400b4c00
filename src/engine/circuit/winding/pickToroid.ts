import { fluxGuide, peakFlux, thickestWire } from '../toroid.ts';
import { type ToroidCore, wholeTurns } from './toroidCoil.ts';

/** Thinnest wire over enamel that the choice of a core for a tuned coil puts up with, m. */
const THINNEST = 0.3e-3;

/**
 * The first of a row of cores, smallest first, on which a tuned coil's turns fit in one layer of
 * wire of 0.3 mm and the flux keeps to the guideline; the last where none does.
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
  const guide = fluxGuide(frequency);
  const fitting = row.find(({ al, size }) => {
    const turns = wholeTurns(l, al);
    return (
      thickestWire(size.inner, turns) >= THINNEST &&
      peakFlux(voltage, turns, size.area, frequency) <= guide
    );
  });
  return fitting ?? row.at(-1);
}
