import type { Look } from '../../fields/workings.ts';
import type { BenchSeen } from './seen.ts';

/** Power to expect at the antenna, W: as Output works it out, else as planned. */
export const expectedPower = (seen: BenchSeen): number | null => seen.power ?? seen.pep;

/** Path of the same. */
export const expectedPowerPath = (look: Look): string =>
  look('output.pepAntenna') === null ? 'plan.pep' : 'output.pepAntenna';

/** The power that a rule is held against: as read, else as expected. */
export const rulingPower = (seen: BenchSeen): number | null =>
  seen.outputRead ?? expectedPower(seen);

/** Path of the same. */
export const rulingPowerPath = (look: Look): string =>
  look('bench.outputRead') === null ? expectedPowerPath(look) : 'bench.outputRead';
