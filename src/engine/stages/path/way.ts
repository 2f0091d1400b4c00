import type { Problem, Work } from '../../fields/stage.ts';
import type { pathFields } from './fields.ts';
import { gainsAt } from './gains.ts';
import type { Arrival } from './reach.ts';
import type { WaySeen } from './seen.ts';

/** Some of the stage's results. */
export type Part = Partial<Work<typeof pathFields>['results']>;

/** What one way of going makes of the signal. */
export interface Way {
  readonly part: Part;
  readonly problems: readonly Problem[];
  /** The same way over another distance; null where nothing arrives. */
  readonly over: (distance: number) => Arrival | null;
  /** End of the chart, m. */
  readonly end: number;
}

/** Gains of both antennas together towards an elevation, dB. */
export function bothGains(seen: WaySeen, elevation: number): number {
  const { here, there } = gainsAt(seen, elevation);
  return here + there;
}
