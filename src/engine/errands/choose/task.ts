import type { Aligning } from '../../circuit/alignedLadder.ts';
import type { Crystal } from '../../circuit/crystal.ts';
import type { Ladder } from '../../circuit/ladder.ts';

/** What is chosen from, and for what. */
export interface Task {
  /** The crystals of the bag, by rising series resonance. */
  readonly crystals: readonly Crystal[];
  /** The crystal that the filter was designed for. */
  readonly alike: Crystal;
  /** −3 dB points of the exact design, Hz. */
  readonly low: number;
  readonly high: number;
  /** The design with alike crystals, its capacitors as they will be fitted, between its real ends. */
  readonly design: Ladder;
  /** Crystals side by side at each position; left out where there is one everywhere. */
  readonly doubled?: readonly number[] | undefined;
  readonly aligning: Aligning;
  /** What is fitted for an aligning capacitance worked for a mesh, F; 0 for none. */
  readonly round: (exact: number) => number;
}

/** Position of each crystal of an arrangement: two of them share one where the design doubles it. */
export const positionsOf = ({ design, doubled }: Task): number[] =>
  [...design.lm.keys()].flatMap((i) => Array<number>(doubled?.[i] ?? 1).fill(i));

/** Which crystals stand in the filter, from source to load: places in the bag. */
export type Arrangement = readonly number[];
