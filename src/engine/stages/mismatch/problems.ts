import type { Problem, Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import type { mismatchFields } from './fields.ts';
import type { MismatchSeen } from './seen.ts';

/** What should be looked at before such an antenna is fed. */
export function problems(
  seen: MismatchSeen,
  results: Work<typeof mismatchFields>['results'],
): Problem[] {
  const found: Problem[] = [];
  const swr = Number(seen.swr.toPrecision(3));
  const { margin, marginOrder, collector, verdict } = results;
  // What fails into the right antenna already is said on Network.
  if (verdict === 'fails' && seen.verdict !== 'fails' && margin !== null) {
    found.push({
      field: 'mismatch.swr',
      weight: 'warns',
      says: `At SWR ${swr} and the worst angle harmonic ${marginOrder} lies ${format(-margin, 'dB', 3)} above the limit, though it keeps it into the right antenna.`,
      try: 'More margin into the right antenna; or a meter, and no transmission above such a ratio.',
    });
  }
  if (seen.limitVce !== null && collector !== null && collector > seen.limitVce) {
    found.push({
      field: 'mismatch.swr',
      weight: 'warns',
      says: `At SWR ${swr} the collector could come to ${format(collector, 'Vpk', 3)} if nothing held the drive; the final bears ${format(seen.limitVce, 'V', 2)}.`,
      try: 'Drive that is turned down when the ratio rises; a transistor for more volts; tests with the supply turned down.',
    });
  }
  return found;
}
