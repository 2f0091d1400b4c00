import {
  type Divider,
  dividerCapacitance,
  type OscillatorCrystal,
} from '../../circuit/colpitts.ts';
import { reach } from './reach.ts';
import type { CarrierSeen } from './seen.ts';
import { baseCapacitance, transconductance } from './transistor.ts';

export interface Oscillator extends ReturnType<typeof reach> {
  /** The crystal, or several side by side as one. */
  readonly x: OscillatorCrystal;
  readonly parts: Divider;
  /** Capacitance that it shows the crystal, F. */
  readonly c: number;
  readonly gm: number;
  readonly cpi: number;
}

/** The oscillator with a number of crystals side by side; as many as are given unless told. */
export function oscillatorOf(seen: CarrierSeen, crystals = seen.crystals): Oscillator {
  const gm = transconductance(seen.standing, seen.ambient);
  const cpi = baseCapacitance(gm, seen.ft, seen.ccb);
  const parts = { c1: seen.c1 + cpi, c2: seen.c2, base: seen.ccb + seen.stray };
  const c = dividerCapacitance(parts);
  const x = {
    fs: seen.fs + seen.crystalOffset,
    lm: seen.lm / crystals,
    rm: seen.rm / crystals,
    c0: seen.c0 * crystals,
  };
  return { x, parts, c, gm, cpi, ...reach(x, c) };
}

/** The nearest frequency that can be reached, Hz; null where the oscillator has no reach at all. */
export function clampToReach(f: number, { low, high }: Oscillator): number | null {
  return low === null || high === null ? null : Math.min(high, Math.max(low, f));
}
