import { between, type Ladder } from '../../circuit/ladder.ts';
import { ladderGain } from '../../circuit/ladderGain.ts';
import { LEAST_GAIN, type Passband, passband, standsOut } from '../../circuit/passband.ts';
import { type Dip, passbandRipple } from '../../circuit/passbandRipple.ts';

/** A ladder between certain ends, and its passband. */
export interface Between {
  readonly ladder: Ladder;
  readonly band: Passband;
  readonly dip: Dip;
}

type End = Ladder['source'];

/** How far outside the passband as it stands its edges may move, in widths. */
const MARGIN = 0.7;

/**
 * The passband of a ladder between certain ends.
 *
 * @param low, high −3 dB points between whatever ends it had, Hz
 */
export function passbandBetween(
  ladder: Ladder,
  source: End,
  load: End,
  low: number,
  high: number,
): Between {
  const placed = between(ladder, source, load);
  const points = 16 * ladder.lm.length + 16;
  const [from, to] = [low - MARGIN * (high - low), high + MARGIN * (high - low)];
  const around = Array.from({ length: points + 1 }, (_, i) => from + ((to - from) * i) / points);
  const band = passband(placed, around, 2e-9);
  return { ladder: placed, band, dip: passbandRipple(placed, around, band) };
}

/** Points of the curve, and how far it goes beyond the passband, in widths. */
const POINTS = 240;
const REACH = 0.8;

/** Frequencies for a curve of the passband and a little of both skirts, Hz. */
export function curveFrequencies({ low, high }: Passband): Float64Array {
  const [from, to] = [low - REACH * (high - low), high + REACH * (high - low)];
  return Float64Array.from({ length: POINTS + 1 }, (_, i) => from + ((to - from) * i) / POINTS);
}

/** The gain along a set of frequencies, dB. */
export function gainAlong({ ladder }: Between, frequency: Float64Array) {
  const gain = new Float64Array(frequency.length);
  ladderGain(ladder, frequency, gain);
  return { frequency, gain };
}

/** Whether there is a passband between these ends: something comes through, and falls on both sides. */
export const isFilter = ({ ladder, band }: Between): boolean =>
  band.gain >= LEAST_GAIN && standsOut(ladder, band);
