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
  readonly aligning: Aligning;
  /** What is fitted for an aligning capacitance worked for a mesh, F; 0 for none. */
  readonly round: (exact: number) => number;
}

/** Which crystal stands at each position: places in the bag. */
export type Arrangement = readonly number[];
