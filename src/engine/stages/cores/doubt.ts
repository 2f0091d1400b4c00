import { format } from '../../quantity/format.ts';

/** Two trials that disagree by more are not of one core. */
export const APART = 0.05;

/** Two factors that agree so well settle which trial was miscounted. */
const SETTLED = 0.02;

/** Two windings on one core and what a meter said. */
export interface Trials {
  readonly turns1: number | null;
  readonly trial1: number | null;
  readonly turns2: number | null;
  readonly trial2: number | null;
}

/**
 * Inductance that leads or the meter add to both trials, if that is all that is wrong, H:
 * (L₁N₂² − L₂N₁²)/(N₂² − N₁²). Null where the turns are the same or a trial is missing.
 */
export function offsetOf({ turns1, trial1, turns2, trial2 }: Trials): number | null {
  if (turns1 === null || trial1 === null || turns2 === null || trial2 === null) return null;
  if (turns1 === turns2) return null;
  const [a, b] = [turns1 ** 2, turns2 ** 2];
  return (trial1 * b - trial2 * a) / (b - a);
}

/** What would explain two trials that disagree; null where they agree or one is missing. */
export function doubt(trials: Trials, apart: number | null): string | null {
  const { turns1, trial1, turns2, trial2 } = trials;
  if (apart === null || apart <= APART) return null;
  if (turns1 === null || trial1 === null || turns2 === null || trial2 === null) return null;
  const causes = [...miscounts(turns1, trial1, turns2, trial2), ...added(trials)];
  if (causes.length === 0) {
    return 'Neither a turn miscounted nor the leads explain it. Spread both windings alike, and measure near the frequency of use: at audio frequency a ferrite is another, and small coils drown in the meter’s own error.';
  }
  return `It would fit if ${causes.join(', or if ')}. Count passes through the hole again; short the meter’s leads and see what they have.`;
}

function miscounts(n1: number, l1: number, n2: number, l2: number): string[] {
  const agrees = (a: number, b: number) => {
    const [x, y] = [l1 / a ** 2, l2 / b ** 2];
    return Math.abs(x - y) / Math.min(x, y) <= SETTLED;
  };
  return [
    ...[n1 - 1, n1 + 1]
      .filter((n) => n > 0 && agrees(n, n2))
      .map((n) => `the first had ${n} turns, not ${n1}`),
    ...[n2 - 1, n2 + 1]
      .filter((n) => n > 0 && agrees(n1, n))
      .map((n) => `the second had ${n} turns, not ${n2}`),
  ];
}

/** Leads and meter: up to half a microhenry or a third of the smaller reading. */
function added(trials: Trials): string[] {
  const offset = offsetOf(trials);
  const least = Math.min(trials.trial1 ?? 0, trials.trial2 ?? 0);
  if (offset === null || offset <= 0 || offset > Math.min(0.5e-6, least / 3)) return [];
  return [`leads and meter add ${format(offset, 'H', 2)} to both`];
}
