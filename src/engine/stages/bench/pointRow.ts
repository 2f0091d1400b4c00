import type { Outcome } from '../../fields/kinds.ts';
import { voltsOfWatts } from '../../quantity/power.ts';
import { judge, judgeLimit, worstOf } from './judge.ts';
import type { Point } from './point.ts';
import type { BenchSeen } from './seen.ts';
import { tolerance } from './tolerance.ts';

/** A row of a table of test points. */
export interface PointRow {
  readonly step: number;
  readonly point: string;
  readonly instrument: string;
  readonly expected: number | null;
  readonly tolerance: number | null;
  readonly low: number | null;
  readonly high: number | null;
  readonly measured: number | null;
  readonly off: number | null;
  readonly verdict: Outcome | null;
  readonly limit: number | null;
  readonly rule: Outcome | null;
  readonly from: string;
  readonly means: string;
}

/** What is expected at a test point, what was read there, and what that says. */
export function pointRow(point: Point, seen: BenchSeen): PointRow {
  const expected = point.expected(seen);
  const allowed = expected === null ? null : tolerance(point, expected, seen);
  const measured = readingOf(point, seen);
  const limit = point.limit?.value(seen) ?? null;
  const off = measured === null || expected === null ? null : measured - expected;
  const verdict =
    measured === null || expected === null || allowed === null
      ? null
      : judge(measured, expected, allowed, point.sides);
  const rule =
    measured === null || limit === null || !point.limit
      ? null
      : judgeLimit(measured, limit, point.limit.spare ?? seen.marginWanted, point.limit.sides);
  return {
    step: point.step,
    point: point.point,
    instrument: point.instrument,
    expected,
    tolerance: allowed,
    low:
      expected === null || allowed === null || point.sides === 'atMost' ? null : expected - allowed,
    high:
      expected === null || allowed === null || point.sides === 'atLeast'
        ? null
        : expected + allowed,
    measured,
    off,
    verdict,
    limit,
    rule,
    from: point.spread.from,
    means: meaning(
      point,
      expected === null ? missing(point, seen) : '',
      off,
      worstOf([verdict, rule]),
    ),
  };
}

function readingOf(point: Point, seen: BenchSeen): number | null {
  const value = seen[point.read];
  if (typeof value !== 'number') return null;
  if (point.negative) return -Math.abs(value);
  return point.asVolts ? voltsOfWatts(value, 'Vpp', seen.dummyLoad) : value;
}

/** Why there is nothing to expect. */
const missing = (point: Point, seen: BenchSeen): string =>
  point.absent?.(seen) ?? `Waits for ${point.needs}.`;

/** What the reading says, in words; `first` is what has to be said before that. */
function meaning(point: Point, first: string, off: number | null, worst: Outcome | null): string {
  if (worst === null) return first === '' ? 'Not measured yet.' : first;
  const said = worst === 'holds' ? 'As it should be.' : cause(point, off);
  return first === '' ? said : `${first} ${said}`;
}

/** What a miss usually comes from: by its side, or by the side that a broken rule forbids. */
function cause(point: Point, off: number | null): string {
  const high = off === null ? point.limit?.sides === 'atMost' : off > 0;
  return (high ? point.above : point.below) || point.above || point.below;
}
