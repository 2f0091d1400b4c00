import { DRAWS, type Factor, kinds, ROOM } from './factors.ts';
import { normalQuantile } from './normalQuantile.ts';
import type { Spreads } from './spreads.ts';
import { threefry } from './threefry.ts';

/** Key of this use of the generator, beside the seed. */
const STREAM = 0x59494c44;
/** Of a normal distribution, what lies below two standard deviations under the middle. */
const CUT = 0.022750131948179;
const PER_WORD = 2 ** -32;

const pair = new Uint32Array(2);

/**
 * Draws all that may be off in one build. Where a tolerance is meant the draw lies between −1 and 1,
 * where a standard deviation is meant its own standard deviation is 1.
 *
 * @param seed whole number; the same seed gives the same builds
 * @param build number of the build, from 0: its draws depend on nothing else
 * @param out receives the draws, `DRAWS` long, each at its factor's place
 */
export function drawBuild(
  seed: number,
  build: number,
  factors: readonly Factor[],
  spreads: Spreads,
  out: Float64Array,
): void {
  let drawn = -1;
  for (let i = 0; i < factors.length; i += 1) {
    const { draw } = factors[i] as Factor;
    const both = draw >> 1;
    if (both !== drawn) {
      threefry(seed, STREAM, build, both, pair);
      drawn = both;
    }
    const p = ((pair[draw & 1] as number) + 0.5) * PER_WORD;
    out[draw] = shaped(kinds[(draw / ROOM) | 0] as string, p, spreads);
  }
}

function shaped(kind: string, p: number, spreads: Spreads): number {
  if (kind === 'coupling' || kind === 'series' || kind === 'ends') {
    return spreads.capacitorShape === 'even'
      ? 2 * p - 1
      : normalQuantile(CUT + p * (1 - 2 * CUT)) / 2;
  }
  if (kind === 'frequency' && spreads.frequencyShape === 'even') {
    return Math.sqrt(3) * (2 * p - 1);
  }
  return normalQuantile(p);
}

/** A place for the draws of one build. */
export const blankDraws = (): Float64Array => new Float64Array(DRAWS);
