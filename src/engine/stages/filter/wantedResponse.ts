import type { Ladder } from '../../circuit/ladder.ts';
import { ladderGain } from '../../circuit/ladderGain.ts';
import type { Wanted } from '../../circuit/partTrial.ts';
import type { Passband } from '../../circuit/passband.ts';

/** Points from edge to edge of the passband, both edges among them. */
const INSIDE = 25;
/** Distances of the points outside from the edge, in widths. */
const OUTSIDE = [0.03, 0.07, 0.12, 0.2, 0.3, 0.45, 0.65, 0.9];
/** How much a point of the skirts counts against one of the passband. */
const SKIRT = 0.1;
/** Further down than this no difference counts, dB below the best point. */
const DEPTH = 60;

/** What the parts are chosen for: the exact design's response at 41 frequencies. */
export interface WantedResponse extends Wanted {
  /** Hz, in no order that matters. */
  readonly frequency: Float64Array;
  /** All weights together. */
  readonly weights: number;
}

/**
 * The response that the fitted parts are to keep to: that of the exact design, at 25 frequencies
 * from edge to edge of its −3 dB passband, closer together towards the edges, and at eight on each
 * skirt out to nine tenths of its width, which count a tenth each.
 */
export function wantedResponse(exact: Ladder, { low, high, gain: best }: Passband): WantedResponse {
  const width = high - low;
  const all = INSIDE + 2 * OUTSIDE.length;
  const frequency = new Float64Array(all);
  const weight = new Float64Array(all).fill(SKIRT);
  // From the edges inwards, then outwards: where parts make most difference a poor choice shows first.
  for (let i = 0; i < INSIDE; i += 1) {
    const out = i % 2 === 0 ? i / 2 : INSIDE - (i + 1) / 2;
    const across = (1 - Math.cos((Math.PI * out) / (INSIDE - 1))) / 2;
    frequency[i] = low + across * width;
    weight[i] = 1;
  }
  OUTSIDE.forEach((distance, i) => {
    frequency[INSIDE + 2 * i] = low - distance * width;
    frequency[INSIDE + 2 * i + 1] = high + distance * width;
  });
  const gain = new Float64Array(all);
  ladderGain(exact, frequency, gain);
  const weights = INSIDE + 2 * OUTSIDE.length * SKIRT;
  return { frequency, gain, weight, weights, depth: best - DEPTH };
}
