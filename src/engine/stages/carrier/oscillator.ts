import {
  type Divider,
  dividerCapacitance,
  type OscillatorCrystal,
} from '../../circuit/colpitts.ts';
import { reach } from '../../circuit/pullingReach.ts';
import type { OwnCrystal } from './ownCrystal.ts';
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

type Parts = Pick<CarrierSeen, 'standing' | 'ambient' | 'ft' | 'ccb' | 'c1' | 'c2' | 'stray'>;

/** The oscillator with its crystal, several side by side as one; as many as there are unless told. */
export function oscillatorOf(
  seen: Parts,
  own: Pick<OwnCrystal, 'fs' | 'lm' | 'rm' | 'c0' | 'count'>,
  crystals = own.count,
): Oscillator {
  const gm = transconductance(seen.standing, seen.ambient);
  const cpi = baseCapacitance(gm, seen.ft, seen.ccb);
  const parts = { c1: seen.c1 + cpi, c2: seen.c2, base: seen.ccb + seen.stray };
  const c = dividerCapacitance(parts);
  const x = {
    fs: own.fs,
    lm: own.lm / crystals,
    rm: own.rm / crystals,
    c0: own.c0 * crystals,
  };
  return { x, parts, c, gm, cpi, ...reach(x, c) };
}

/** The nearest frequency that can be reached, Hz; null where the oscillator has no reach at all. */
export function clampToReach(f: number, { low, high }: Oscillator): number | null {
  return low === null || high === null ? null : Math.min(high, Math.max(low, f));
}
