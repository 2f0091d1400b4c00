import { bestSplit } from '../../stages/bag/humps.ts';
import { meanOf, rmsAbout } from '../../stages/bag/statistics.ts';
import { normalQuantile } from '../yield/normalQuantile.ts';
import { chanceOf } from './chance.ts';

/** A set that is wanted out of a lot. */
export interface Wanted {
  /** Crystals of the set. */
  readonly set: number;
  /** Most that may lie between the lowest and the highest of them, Hz. */
  readonly window: number;
  /** Likelihood with which the set is to be found. */
  readonly confidence: number;
}

/** What lots are like: an own lot's frequencies, or a standard deviation. Hz. */
export type LotLike =
  | { readonly kind: 'own'; readonly frequencies: readonly number[] }
  | { readonly kind: 'normal'; readonly spread: number };

export interface Buying {
  /** Crystals to buy for the confidence asked for; null where even the most is not enough. */
  readonly number: number | null;
  /** Crystals in the lot, 1 to the most that were drawn, and how likely the set is among so many. */
  readonly lots: Float64Array;
  readonly chances: Float64Array;
  /** Lots drawn. */
  readonly trials: number;
}

const STREAM = 0x42555959;
/** Largest lot that is drawn. */
export const LARGEST_LOT = 300;
const TRIALS = 4000;

/**
 * How many crystals to buy: lots are drawn crystal by crystal until the set is among them, thousands
 * of times. An own lot is drawn from its own crystals, each a little blurred, so that no two are
 * alike by being the same one.
 *
 * @source smoothed bootstrap with the variance kept: B. W. Silverman, Density Estimation, 1986,
 * sections 3.4 and 6.4
 * @return yields the part that is done
 */
export function* buy(
  { set, window, confidence }: Wanted,
  lot: LotLike,
  seed: number,
  trials = TRIALS,
): Generator<number, Buying, void> {
  const chance = chanceOf(seed, STREAM);
  const draw = drawer(lot, chance);
  const waits = new Float64Array(LARGEST_LOT + 2);
  const sorted = new Float64Array(LARGEST_LOT);
  for (let t = 0; t < trials; t += 1) {
    const wait = waitFor(set, window, draw, sorted);
    waits[wait] = (waits[wait] as number) + 1;
    if (t % 20 === 0) yield t / trials;
  }
  const lots = Float64Array.from({ length: LARGEST_LOT }, (_, i) => i + 1);
  const chances = new Float64Array(LARGEST_LOT);
  let sum = 0;
  for (let n = 1; n <= LARGEST_LOT; n += 1) {
    sum += waits[n] as number;
    chances[n - 1] = sum / trials;
  }
  const enough = chances.findIndex((one) => one >= confidence);
  return { number: enough < 0 ? null : enough + 1, lots, chances, trials };
}

/** Draws until some `set` of the crystals lie within the window; answers how many that took. */
function waitFor(set: number, window: number, draw: () => number, sorted: Float64Array): number {
  for (let n = 0; n < LARGEST_LOT; n += 1) {
    const f = draw();
    let at = n;
    while (at > 0 && (sorted[at - 1] as number) > f) {
      sorted[at] = sorted[at - 1] as number;
      at -= 1;
    }
    sorted[at] = f;
    // Only sets with the new one in them can be new.
    for (let low = Math.max(0, at - set + 1); low <= at && low + set <= n + 1; low += 1) {
      if ((sorted[low + set - 1] as number) - (sorted[low] as number) <= window) return n + 1;
    }
  }
  return LARGEST_LOT + 1;
}

function drawer(lot: LotLike, chance: () => number): () => number {
  if (lot.kind === 'normal') return () => lot.spread * normalQuantile(chance());
  const frequencies = [...lot.frequencies].sort((a, b) => a - b);
  const count = frequencies.length;
  const first = frequencies[0] ?? 0;
  const off = frequencies.map((f) => f - first);
  const mean = meanOf(off);
  const spread = rmsAbout(off, mean);
  // Half of a normal lot has this part of its deviation: of two humps the blur is that of one.
  const inHalf = Math.sqrt(1 - 2 / Math.PI);
  const local = count < 4 ? spread : bestSplit(off).within / inHalf;
  const width = 0.9 * Math.min(spread, local) * count ** -0.2;
  const shrink = spread > 0 ? 1 / Math.sqrt(1 + (width / spread) ** 2) : 1;
  return () => {
    const one = off[Math.floor(chance() * count)] as number;
    return mean + (one - mean + width * normalQuantile(chance())) * shrink;
  };
}
