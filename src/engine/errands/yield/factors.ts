import type { Ladder } from '../../circuit/ladder.ts';

/** What may be off, in the order in which it is drawn. */
export const kinds = ['coupling', 'series', 'frequency', 'lm', 'rm', 'c0', 'ends'] as const;
export type Kind = (typeof kinds)[number];

/** One thing that is drawn for each build. */
export interface Factor {
  readonly kind: Kind;
  /** Which of its kind, from 0. */
  readonly position: number;
  /** Where its draw stands: the same for the same part, whatever else is drawn. */
  readonly draw: number;
}

/** Draws set aside for each kind: as many as crystals there may be, and some. */
export const ROOM = 16;

/** All draws that may be made for a build. */
export const DRAWS = kinds.length * ROOM;

/** Everything that may be off in a ladder: only parts that are there. */
export function factorsOf(ladder: Ladder): Factor[] {
  const n = ladder.lm.length;
  const of = (kind: Kind, positions: readonly number[]): Factor[] =>
    positions.map((position) => ({
      kind,
      position,
      draw: kinds.indexOf(kind) * ROOM + position,
    }));
  const all = [...Array(n).keys()];
  return [
    ...of('coupling', [...ladder.coupling.keys()]),
    ...of(
      'series',
      all.filter((i) => (ladder.series[i] ?? 0) > 0),
    ),
    ...of('frequency', all),
    ...of('lm', all),
    ...of('rm', all),
    ...of('c0', all),
    ...of('ends', [0, 1]),
  ];
}
