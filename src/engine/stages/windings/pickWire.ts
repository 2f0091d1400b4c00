import { type Wire, wires } from '../../data/wires.ts';

/** Wire thicker than this is too stiff for a toroid by hand, m. */
const STIFFEST = 0.81e-3;

/**
 * The wire for a winding: the one asked for, or the thickest that fits.
 *
 * @param wanted `metric`, `awg`, or a wire's title
 * @param room greatest diameter over the enamel, m
 * @param cap greatest copper diameter, m
 * @returns the thinnest of the system where none fits
 */
export function pickWire(wanted: string, room: number, cap = STIFFEST): Wire {
  const named = wires.find(({ title }) => title === wanted);
  if (named) return named;
  const system = wires.filter((wire) => wire.system === (wanted === 'awg' ? 'awg' : 'metric'));
  const fitting = system.filter(({ bare, overall }) => overall <= room && bare <= cap);
  return fitting.at(-1) ?? system[0] ?? (wires[0] as Wire);
}
