import type { RowOf } from '../../fields/kinds.ts';
import { powerRatioOfDb } from '../../quantity/decibel.ts';
import type { mixerResults } from './mixerFields.ts';
import type { TransmitSeen } from './seen.ts';

/** What is left of the mixer's other products, carried along to the antenna; null without a mixer. */
export function unwantedRows({
  frontLeftovers,
  pep,
}: TransmitSeen): RowOf<typeof mixerResults.unwanted.columns>[] | null {
  if (frontLeftovers === null) return null;
  return frontLeftovers.map(({ what, frequency, left }) => ({
    what,
    frequency,
    below: left,
    power: left === null ? null : pep * powerRatioOfDb(left),
  }));
}
