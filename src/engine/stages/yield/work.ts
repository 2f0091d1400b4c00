import type { Ladder } from '../../circuit/ladder.ts';
import type { Work } from '../../fields/stage.ts';
import type { yieldFields } from './fields.ts';
import { problems } from './problems.ts';
import type { YieldSeen } from './seen.ts';

/** Standard normal deviation beyond which one in twenty lies. */
export const ONE_IN_TWENTY = 1.959963985;
/** Frequencies of crystals that are nearer than this, relative, are the same. */
const SAME = 1e-10;

/** What can be said before anything is built: which spread counts, and what is asked in vain. */
export function workYield(seen: YieldSeen): Work<typeof yieldFields> {
  const basis = alike(seen.ladder) ? 'alike' : 'chosen';
  const spreadUsed = basis === 'chosen' ? seen.measuring : seen.spread;
  const window = spreadUsed * (seen.frequencyShape === 'even' ? Math.sqrt(12) : 2 * ONE_IN_TWENTY);
  return {
    results: {
      usualLeast: seen.bandwidth * 0.95,
      usualMost: seen.bandwidth * 1.05,
      basis,
      spreadUsed,
      window,
      windowShare: window / seen.width,
      sureness: ONE_IN_TWENTY * Math.sqrt(0.25 / seen.builds),
    },
    problems: problems(seen),
  };
}

/** Whether all crystals of a ladder have the same frequency: then none was chosen for its place. */
function alike({ lm, cm }: Ladder): boolean {
  const first = (lm[0] ?? 0) * (cm[0] ?? 0);
  return lm.every((l, i) => Math.abs(l * (cm[i] ?? 0) - first) <= SAME * first);
}
