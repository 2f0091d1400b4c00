import type { Instrument, Point } from './point.ts';
import type { BenchSeen } from './seen.ts';

/**
 * How far a good rig's reading may lie from the expected one: spread of parts and model, and the
 * instrument's error, as the root of the sum of their squares (they have nothing to do with one
 * another). In the unit of the reading.
 *
 * @param point the test point
 * @param expected reading to expect
 * @param seen errors of the instruments
 */
export function tolerance(point: Point, expected: number, seen: BenchSeen): number {
  const { share = 0, fixed = 0 } = point.spread;
  const parts = share * expected;
  const meter = instrumentShare(point.by, seen) * expected;
  const level = point.by === 'analyser' ? seen.analyserError : 0;
  return Math.sqrt(parts * parts + fixed * fixed + meter * meter + level * level);
}

/** Error of an instrument as a share of the reading; an analyser's is a level of its own. */
function instrumentShare(by: Instrument, seen: BenchSeen): number {
  if (by === 'meter') return seen.meterError;
  if (by === 'scope') return seen.scopeError;
  // power goes with the square of the voltage
  if (by === 'power') return 2 * seen.scopeError;
  return by === 'counter' ? seen.counterError : 0;
}
