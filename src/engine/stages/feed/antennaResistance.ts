import { type FeedLineKey, feedLines } from '../../data/feedLines.ts';
import type { FeedSeen } from './seen.ts';

/** Kinds of antenna that a line is joined to without a transformer or tuner between. */
const direct: ReadonlySet<unknown> = new Set(['dipole', 'vertical', 'whip']);

/**
 * What the line sees at the antenna, Ω: radiation and loss resistance of an antenna in tune; null
 * where a transformer matches it, or where Antenna is not asked.
 */
export function antennaResistance({
  kind,
  radiation,
  losses,
}: Pick<FeedSeen, 'kind' | 'radiation' | 'losses'>): number | null {
  if (!direct.has(kind) || radiation === null) return null;
  return radiation + (losses ?? 0);
}

/** What an SWR is measured against where the line is not said, Ω. */
const USUAL = 50;

/** Would an SWR typed for the line in use be found on another line too? On one of its impedance. */
export function swrHolds(inUse: FeedSeen['line'], other: FeedLineKey): boolean {
  const against = inUse === 'known' ? USUAL : feedLines[inUse].impedance;
  return feedLines[other].impedance === against;
}
