import type { Origin, Outcome } from '../engine/fields/kinds.ts';
import type { Move } from '../engine/rig/moved.ts';
import {
  originAt,
  valueAt,
  type Worked,
  type WorkedInput,
  type WorkedStage,
} from '../engine/rig/worked.ts';
import { movedBetween, workedOf } from './bench.ts';
import { type BenchState, useBench } from './store.ts';

const blank: WorkedInput = { text: undefined, value: null, origin: 'typical', wrong: false };

/** The whole worked rig; for what shows many figures at once. */
export const useWorked = (): Worked => useBench((s) => workedOf(s.rig));

/** One input as typed and as understood. */
export const useInput = (path: string): WorkedInput =>
  useBench((s) => workedOf(s.rig).inputs[path] ?? blank);

/** The value of an input or result; null where there is none. The caller knows its type. */
export const useValue = <T>(path: string): T | null =>
  useBench((s) => valueAt(workedOf(s.rig), path) as T | null);

/** Where a value came from. */
export const useOrigin = (path: string): Origin => useBench((s) => originAt(workedOf(s.rig), path));

/** One stage as worked. */
export const useStage = (key: string): WorkedStage | undefined =>
  useBench((s) => workedOf(s.rig).stages[key]);

/** What the last change moved. */
export const useMoves = (): readonly Move[] => useBench((s) => movesOf(s));

/** How the last change moved one result; undefined where it did not. */
export const useMove = (path: string): Move | undefined =>
  useBench((s) => movesOf(s).find((move) => move.path === path));

const movesOf = (s: BenchState): readonly Move[] => movedBetween(s.before, s.rig);

/** How a worked stage stands. */
export function standing(stage: WorkedStage | undefined): Outcome | 'waits' {
  if (!stage || stage.waitsFor !== null) return 'waits';
  if (stage.problems.some(({ weight }) => weight === 'stops')) return 'fails';
  return stage.problems.length > 0 ? 'close' : 'holds';
}
