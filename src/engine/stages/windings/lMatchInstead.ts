import { format } from '../../quantity/format.ts';

/** From this ratio of impedances on an L match is worth a thought. */
export const STEEP = 9;

/**
 * An L match that does a steep transformer's work at one frequency, in words; null where the step
 * is not steep. A coil in series on the low side, a capacitor across the high side, Q = √(n − 1).
 *
 * @param first, second resistances, Ω
 * @param frequency Hz
 * Source: closed form.
 */
export function lMatchInstead(first: number, second: number, frequency: number): string | null {
  const [low, high] = [Math.min(first, second), Math.max(first, second)];
  if (high / low < STEEP) return null;
  const q = Math.sqrt(high / low - 1);
  const l = (low * q) / (2 * Math.PI * frequency);
  const c = q / (2 * Math.PI * frequency * high);
  return `L match: ${format(l, 'H', 3)} in series, ${format(c, 'F', 3)} across the ${format(high, 'Ω', 3)} side`;
}
