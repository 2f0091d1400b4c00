import type { Ladder } from '../../circuit/ladder.ts';
import { gainAt } from '../../circuit/ladderGain.ts';
import type { Passband } from '../../circuit/passband.ts';

/** How many widths from the passband is far away. */
export const FAR = 10;

/**
 * How far down a ladder is ten widths below and above its passband, on the worse side, dB. Null for
 * passbands so wide that there is no such place below.
 */
export function farOff(ladder: Ladder, { low, high, gain }: Passband): number | null {
  const away = FAR * (high - low);
  if (away > low / 2) return null;
  return gain - Math.max(gainAt(ladder, low - away), gainAt(ladder, high + away));
}
