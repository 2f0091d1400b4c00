import type { Kind } from './factors.ts';
import type { Spreads } from './spreads.ts';

/** Kinds of parts that are bought, matched or adjusted together. */
export type Group = 'capacitors' | 'frequency' | 'lm' | 'rm' | 'c0' | 'ends';

export const groups: readonly Group[] = ['capacitors', 'frequency', 'lm', 'rm', 'c0', 'ends'];

/** The group that a kind of factor belongs to. */
export const groupOf = (kind: Kind): Group =>
  kind === 'coupling' || kind === 'series' ? 'capacitors' : kind;

/** The same filter built with one thing better or worse. */
export interface Trial {
  readonly group: Group;
  /** Tolerance as a fraction, or standard deviation: Hz for the frequency. */
  readonly value: number;
  readonly spreads: Spreads;
}

/** Tolerances that capacitors are sold in. */
const SOLD = [0.01, 0.02, 0.05, 0.1, 0.2] as const;
/** Steps of matching against what there is, and those in Hz where there is no spread. */
const MATCHED = [1 / 16, 1 / 8, 1 / 4, 1 / 2, Math.SQRT1_2, 1, Math.SQRT2, 2] as const;
const FROM_NONE = [5, 10, 20, 50, 100] as const;

/** Everything that is tried beside the builds themselves: each group made perfect, and steps of the two that are bought by tolerance or matched. */
export function trialsOf(spreads: Spreads): Trial[] {
  const trial = (group: Group, value: number): Trial => ({
    group,
    value,
    spreads: { ...spreads, [group]: value },
  });
  const matching =
    spreads.frequency > 0 ? MATCHED.map((step) => step * spreads.frequency) : [...FROM_NONE];
  return [
    ...groups.map((group) => trial(group, 0)),
    ...SOLD.map((value) => trial('capacitors', value)),
    ...matching.map((value) => trial('frequency', value)),
  ];
}
