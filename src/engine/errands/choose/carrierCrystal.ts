import { oscillatorOf } from '../../stages/carrier/oscillator.ts';
import { type Named, together } from '../../stages/carrier/ownCrystal.ts';
import type { CarrierSeen } from '../../stages/carrier/seen.ts';

/** The crystals that are best for the carrier of those that are left. */
export interface CarrierChoice {
  readonly labels: readonly string[];
  /** Where the carrier belongs on the filter's skirt, Hz. */
  readonly frequency: number;
  /** Series resonance of the crystal, of several together, Hz. */
  readonly fs: number;
  /** Where the oscillator runs without any series part, Hz. */
  readonly bare: number;
  /** How far a series part has to pull it from there: up by a capacitor, down by a coil, Hz. */
  readonly pull: number;
  /** Whether that is within reach; the least out of reach is named otherwise. */
  readonly reaches: boolean;
  /** Where its reach ends on that side, Hz. */
  readonly furthest: number;
}

type Oscillator = Pick<
  CarrierSeen,
  'standing' | 'ambient' | 'ft' | 'ccb' | 'c1' | 'c2' | 'stray' | 'crystals'
>;

/**
 * Of the crystals that are left, those that need the least pulling to the frequency: as many side by
 * side as the oscillator is to have. Null where none is left that oscillates.
 *
 * @param left with all their figures
 */
export function carrierCrystal(
  left: readonly Named[],
  frequency: number,
  oscillator: Oscillator,
): CarrierChoice | null {
  let best: CarrierChoice | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const some of combinations(left, Math.min(oscillator.crystals, left.length))) {
    const own = { ...together(some), count: some.length };
    const { bare, low, high } = oscillatorOf(oscillator, own);
    if (bare === null || low === null || high === null) continue;
    const pull = frequency - bare;
    const over = Math.max(0, frequency - high, low - frequency);
    // Whatever reaches comes before all that does not.
    const effort = over > 0 ? 1e9 + over : Math.abs(pull);
    if (effort >= least) continue;
    least = effort;
    best = {
      labels: some.map(({ label }) => label),
      frequency,
      fs: own.fs,
      bare,
      pull,
      reaches: over === 0,
      furthest: pull > 0 ? high : low,
    };
  }
  return best;
}

/** Every way to take n of them, in order. */
function* combinations<T>(all: readonly T[], n: number, from = 0): Generator<T[], void, void> {
  if (n === 0) {
    if (from > 0) yield [];
    return;
  }
  for (let i = from; i + n <= all.length; i += 1) {
    if (n === 1) yield [all[i] as T];
    else for (const rest of combinations(all, n - 1, i + 1)) yield [all[i] as T, ...rest];
  }
}
