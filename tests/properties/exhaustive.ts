import { seriesResonance } from '../../src/engine/circuit/crystal.ts';
import {
  asItIs,
  type Choice,
  finestDip,
  looksOf,
} from '../../src/engine/errands/choose/arrange.ts';
import { gridOf } from '../../src/engine/errands/choose/grid.ts';
import { apartOf, judgeOf } from '../../src/engine/errands/choose/judge.ts';
import { meritOf } from '../../src/engine/errands/choose/merit.ts';
import type { Task } from '../../src/engine/errands/choose/task.ts';

/**
 * The least merit of all arrangements whose ripple is not above that of the closest neighbours.
 * Where the ladder is symmetric, an arrangement and its mirror image count once.
 */
export function exhaustive(task: Task, { closest }: Choice): number {
  if (!closest) throw new Error('no filter');
  const n = task.design.lm.length;
  const grid = gridOf(task, 12 * n + 24);
  const judge = judgeOf(task, grid.offsets);
  const against = { width: grid.width, ripple: judge.look(closest.arrangement).ripple };
  const fs = Float64Array.from(task.crystals, seriesResonance);
  let best = Number.POSITIVE_INFINITY;
  const visit = (taken: readonly number[]): void => {
    if (taken.length < n) {
      for (let c = 0; c < task.crystals.length; c += 1) {
        if (!taken.includes(c)) visit([...taken, c]);
      }
      return;
    }
    if ((taken[0] ?? 0) > (taken[n - 1] ?? 0)) return;
    const built = asItIs(task, taken, judge.build(taken));
    if (Math.max(built.ripple, finestDip(built)) > closest.ripple) return;
    const apart = apartOf(taken, fs);
    best = Math.min(best, meritOf({ ...looksOf(built), apart }, against));
  };
  visit([]);
  return best;
}
