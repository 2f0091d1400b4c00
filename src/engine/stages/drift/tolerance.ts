import { reactanceAt } from '../../circuit/colpitts.ts';
import { covering, trimmingWords } from '../../data/trimmers.ts';
import type { Placed } from './seen.ts';

/** Smallest capacitance that a trimmer with wires has, F. */
const LEAST = 2e-12;

/**
 * Series capacitance for the carrier with a crystal and a divider at one end of their spread, F;
 * null where a coil would be needed, or nothing.
 *
 * @param way −1: crystal low and divider large, which asks for the least; +1 for the most
 */
export function seriesAt(seen: Placed, way: 1 | -1): number | null {
  const n = seen.together;
  const crystal = {
    fs: seen.fs + way * seen.spread,
    lm: seen.lm / n,
    rm: seen.rm / n,
    c0: seen.c0 * n,
  };
  const omega = 2 * Math.PI * seen.carrier;
  const divider = seen.divider * (1 - way * seen.partSpread);
  const over = reactanceAt(crystal, seen.carrier) - 1 / (omega * divider);
  return over > 0 ? 1 / (omega * over) : null;
}

/** Whether a usual trimmer covers the spread, and which. */
export function covers(least: number | null, most: number | null) {
  if (least === null && most === null) return { covers: 'none', trimmer: null } as const;
  if (least === null || most === null || least < LEAST) {
    return { covers: 'fails', trimmer: null } as const;
  }
  const found = covering(least, most);
  return found === null
    ? ({ covers: 'fails', trimmer: null } as const)
    : ({ covers: 'holds', trimmer: trimmingWords(found) } as const);
}
