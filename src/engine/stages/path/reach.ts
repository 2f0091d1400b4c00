/** What arrives at one distance. */
export interface Arrival {
  /** 0 where there is no hop. */
  readonly hops: number;
  /** dB */
  readonly loss: number;
  /** Both antennas towards this ray, dB. */
  readonly gains: number;
}

/** How many distances the chart shows. */
const REACH_POINTS = 81;

/**
 * Distances of the chart, m: even steps from the first step to the end.
 *
 * @param end farthest distance, m
 */
export function reachDistances(end: number): Float64Array {
  return Float64Array.from({ length: REACH_POINTS }, (_, i) => (end * (i + 1)) / REACH_POINTS);
}
