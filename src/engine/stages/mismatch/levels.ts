import { WAVES_SIZE } from '../../circuit/mismatch/chainWaves.ts';
import { type HarmonicRise, harmonicRise } from '../../circuit/mismatch/harmonicRise.ts';
import type { Followed } from './followed.ts';
import type { MismatchSeen } from './seen.ts';

/** Harmonics weaker than this share of the fundamental current are none. */
const NOTHING = 1e-9;

/** A harmonic for the margins: its level against a fundamental that passes with a gain of one, dB. */
export interface Level {
  readonly order: number;
  readonly rise: HarmonicRise;
  /** Into the plain antenna resistance; into the same ratio at its worst; into anything at all. */
  readonly plain: number;
  readonly same: number;
  readonly any: number;
}

/** Every harmonic that the collector's current has, for an antenna with a reflection of one size. */
export function levels(seen: MismatchSeen, { loaded, orders }: Followed, rho: number): Level[] {
  const first = Math.abs(seen.harmonicCurrents[1] ?? 0);
  const rows: Level[] = [];
  for (let n = 2; n <= orders; n += 1) {
    const current = Math.abs(seen.harmonicCurrents[n] ?? 0);
    if (!(current > NOTHING * first)) continue;
    const rise = harmonicRise(loaded, rho, (n - 1) * WAVES_SIZE);
    const plain = 20 * Math.log10(current / first) + 10 * Math.log10(rise.plain);
    const any = rise.any === null ? Number.POSITIVE_INFINITY : plain + rise.any;
    rows.push({ order: n, rise, plain, same: plain + rise.same, any });
  }
  return rows;
}
