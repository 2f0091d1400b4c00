import { fluxGuide, peakFlux, thickestWire, turnsFor } from '../../circuit/toroid.ts';
import { type Core, cores } from '../../data/cores.ts';

/** Above this frequency mix 6 is taken, below it mix 2, Hz. */
const MIX_SPLIT = 10e6;

/** Thinnest copper over enamel that the choice of a core for a tuned coil puts up with, m. */
const THINNEST = 0.3e-3;

/**
 * The core for a tuned coil: the one asked for, or the smallest from T37 up on which the turns fit
 * in one layer of wire of 0.3 mm and the flux keeps to the guideline. The largest where none does.
 *
 * @param wanted `auto` or a core's key
 * @param l inductance, H
 * @param frequency Hz
 * @param voltage across the coil, V rms; 0 for small signals
 */
export function pickIron(wanted: string, l: number, frequency: number, voltage: number): Core {
  const named = cores.find(({ key }) => key === wanted);
  if (named) return named;
  const mix = frequency > MIX_SPLIT ? '6' : '2';
  const row = ['T37', 'T44', 'T50', 'T68', 'T80', 'T94', 'T106'].flatMap((size) =>
    cores.filter(({ key }) => key === `${size}-${mix}`),
  );
  const fitting = row.find(({ al, size }) => {
    const turns = Math.max(1, Math.round(turnsFor(l, al)));
    return (
      thickestWire(size.inner, turns) >= THINNEST &&
      peakFlux(voltage, turns, size.area, frequency) <= fluxGuide(frequency)
    );
  });
  return fitting ?? (row.at(-1) as Core);
}
