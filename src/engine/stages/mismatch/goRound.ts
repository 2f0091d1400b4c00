import { type Around, aroundCircle, ROUND } from '../../circuit/mismatch/aroundCircle.ts';
import { type Followed, rhoOf } from './followed.ts';
import { type Level, levels } from './levels.ts';
import { type Margins, marginsAround } from './margins.ts';
import type { MismatchSeen } from './seen.ts';

/** One standing-wave ratio, once round. */
export interface Round {
  readonly swr: number;
  readonly around: Around;
  readonly levels: readonly Level[];
  readonly margins: Margins;
  /** Step at which each is worst. */
  readonly at: Readonly<
    Record<'margin' | 'same' | 'any' | 'loss' | 'power' | 'collector' | 'held' | 'heat', number>
  >;
}

/** Goes once round at one ratio and finds the worst of everything. */
export function goRound(seen: MismatchSeen, network: Followed, swr: number): Round {
  const rho = rhoOf(swr);
  const around = aroundCircle(network.alone, network.loaded, seen.antenna, rho, {
    ...seen,
    sides: seen.finalForm === 'pushPull' ? 2 : 1,
  });
  // Where there are no parts nothing is lost, and rounding is no loss.
  if (seen.ladder.branches.length === 0) around.loss.fill(0);
  const rows = levels(seen, network, rho);
  // At a ratio of one all angles are the same.
  const steps = swr === 1 ? 1 : ROUND;
  const margins = marginsAround(seen, rows, around, steps);
  return {
    swr,
    around,
    levels: rows,
    margins,
    at: {
      margin: least(margins.plain, steps),
      same: least(margins.same, steps),
      any: least(margins.any, steps),
      loss: most(around.loss, steps),
      power: least(around.power, steps),
      collector: most(around.unheld, steps),
      held: most(around.held, steps),
      heat: most(around.heat, steps),
    },
  };
}

function least(of: Float64Array, steps: number): number {
  let at = 0;
  for (let k = 1; k < steps; k += 1) if ((of[k] ?? 0) < (of[at] ?? 0)) at = k;
  return at;
}

function most(of: Float64Array, steps: number): number {
  let at = 0;
  for (let k = 1; k < steps; k += 1) if ((of[k] ?? 0) > (of[at] ?? 0)) at = k;
  return at;
}
