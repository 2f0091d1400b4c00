import type { Outcome } from '../../fields/kinds.ts';

/** On which side of the expectation a reading can be wrong. */
export type Sides = 'both' | 'atMost' | 'atLeast';

/**
 * A reading against what was to be expected: within the tolerance it holds, within twice the
 * tolerance it is close, farther off it fails. Nothing better than expected is a fault where only
 * one side counts.
 *
 * @param measured reading
 * @param expected in the same unit
 * @param tolerance ≥ 0, same unit
 * @param sides `atMost`: lower is better (a harmonic); `atLeast`: higher is better
 */
export function judge(
  measured: number,
  expected: number,
  tolerance: number,
  sides: Sides,
): Outcome {
  const off = offOn(sides, measured - expected);
  if (off <= tolerance) return 'holds';
  return off <= 2 * tolerance ? 'close' : 'fails';
}

/**
 * A reading against a limit: it holds with so much to spare, is close with less, fails beyond it.
 *
 * @param measured reading
 * @param limit same unit
 * @param spare wanted distance from the limit, ≥ 0
 * @param sides `atMost`: the reading must not be above; `atLeast`: not below
 */
export function judgeLimit(
  measured: number,
  limit: number,
  spare: number,
  sides: 'atMost' | 'atLeast',
): Outcome {
  const margin = sides === 'atMost' ? limit - measured : measured - limit;
  if (margin >= spare) return 'holds';
  return margin >= 0 ? 'close' : 'fails';
}

/** The worse of several outcomes; null where there is none. */
export function worstOf(outcomes: readonly (Outcome | null)[]): Outcome | null {
  for (const outcome of ['fails', 'close', 'holds'] as const) {
    if (outcomes.includes(outcome)) return outcome;
  }
  return null;
}

function offOn(sides: Sides, difference: number): number {
  if (sides === 'atMost') return difference;
  return sides === 'atLeast' ? -difference : Math.abs(difference);
}
