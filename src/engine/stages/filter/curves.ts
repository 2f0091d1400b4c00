import type { Ladder } from '../../circuit/ladder.ts';
import { ladderGain } from '../../circuit/ladderGain.ts';
import { ladderResponse } from '../../circuit/ladderResponse.ts';
import type { Passband } from '../../circuit/passband.ts';
import { CORNER } from './corners.ts';
import { responseFrequencies } from './responseFrequencies.ts';

/** A ladder's response along a set of frequencies. */
export interface Response {
  readonly frequency: Float64Array;
  readonly gain: Float64Array;
  readonly delay: Float64Array;
  readonly returnLoss: Float64Array;
}

/** The response as built, and that of the exact design at the same frequencies if it is another. */
export function curves(
  ladder: Ladder,
  exact: Ladder,
  band: Passband,
): {
  response: Response;
  exactResponse: { frequency: Float64Array; gain: Float64Array } | null;
} {
  const frequency = responseFrequencies(ladder, band);
  const blank = () => new Float64Array(frequency.length);
  const response = { frequency, gain: blank(), delay: blank(), returnLoss: blank() };
  ladderResponse(ladder, frequency, response);
  if (ladder === exact) return { response, exactResponse: null };
  const gain = blank();
  ladderGain(exact, frequency, gain);
  return { response, exactResponse: { frequency, gain } };
}

/** What a curve says of the passband. */
export interface Within {
  /** Area under the response as a power ratio, by trapezoids along the curve, Hz. */
  readonly area: number;
  /** Longest and shortest group delay between the −3 dB points, s. */
  readonly slowest: number;
  readonly fastest: number;
  /** Least return loss over the middle eight tenths, dB, and where, Hz. */
  readonly worstMatch: number;
  readonly worstMatchAt: number;
}

/** Reads a curve between the −3 dB points `low` and `high`, Hz. */
export function within(
  { frequency, gain, delay, returnLoss }: Response,
  low: number,
  high: number,
  centre: number,
  width: number,
): Within {
  let area = 0;
  let slowest = Number.NEGATIVE_INFINITY;
  let fastest = Number.POSITIVE_INFINITY;
  let worstMatch = Number.POSITIVE_INFINITY;
  let worstMatchAt = centre;
  let powerBefore = 0;
  for (let i = 0; i < frequency.length; i += 1) {
    const f = frequency[i] ?? 0;
    const power = 10 ** ((gain[i] ?? 0) / 10);
    if (i > 0) area += ((power + powerBefore) / 2) * (f - (frequency[i - 1] ?? 0));
    powerBefore = power;
    if (f < low || f > high) continue;
    const late = delay[i] ?? 0;
    slowest = Math.max(slowest, late);
    fastest = Math.min(fastest, late);
    const match = returnLoss[i] ?? 0;
    if (Math.abs(f - centre) <= (CORNER / 2) * width && match < worstMatch) {
      worstMatch = match;
      worstMatchAt = f;
    }
  }
  return { area, slowest, fastest, worstMatch, worstMatchAt };
}
