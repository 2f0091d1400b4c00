import type { Emission, OwnLine } from './emission.ts';

/**
 * Least attenuation by a user's own set: of the lines that hold the frequency, the one that asks
 * most; where none does, the single figure.
 *
 * @returns dB below the wanted signal
 */
export function ownLimit({ frequency, power, own, ownLines }: Emission): number {
  let most = Number.NEGATIVE_INFINITY;
  for (const line of ownLines ?? []) {
    if (holds(line, frequency)) most = Math.max(most, askedBy(line, power));
  }
  return most === Number.NEGATIVE_INFINITY ? own : most;
}

/** Does a line say anything of this frequency? */
export function holds({ from, to, below, absolute }: OwnLine, frequency: number): boolean {
  if (from === null || to === null || (below === null && absolute === null)) return false;
  return frequency >= from && frequency <= to;
}

/** What a line that holds asks, dB below a wanted signal of so many watts. */
export function askedBy({ below, absolute, whichever }: OwnLine, power: number): number {
  const down = absolute === null ? null : 10 * Math.log10(power / 1e-3) - absolute;
  if (below === null || down === null) return below ?? down ?? 0;
  return whichever === 'more' ? Math.max(below, down) : Math.min(below, down);
}
