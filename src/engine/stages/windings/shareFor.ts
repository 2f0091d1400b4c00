import { bunchedRise, type FluxRing, shareForRise } from '../../circuit/winding/bunchedRise.ts';
import { SPREAD } from '../../circuit/winding/toroidCoil.ts';

/** Less missing than this needs no squeezing. */
export const CLOSE = 0.005;

/**
 * Share of the core over which the turns are to stand so that a core of nominal factor makes what is
 * wanted: all of it but the gap where they give enough, touching where not even that does.
 *
 * @param wanted over what the turns give when spread
 * @param coverage share that touching turns take
 */
export function shareFor(wanted: number, coverage: number, ring: FluxRing): number {
  if (wanted <= 1 + CLOSE || coverage >= SPREAD) return SPREAD;
  return shareForRise(wanted * bunchedRise(SPREAD, ring), ring, coverage, SPREAD) ?? coverage;
}

const shares: readonly (readonly [number, string])[] = [
  [0.87, 'spread over all of the core but for a gap of 30°'],
  [0.79, 'spread over five sixths of the core'],
  [0.71, 'spread over three quarters of the core'],
  [0.58, 'spread over two thirds of the core'],
  [0.42, 'spread over half of the core'],
  [0.29, 'pushed together over a third of the core'],
  [0, 'pushed together over a quarter of the core'],
];

/** A share of the core as a builder says it. */
export const shareWords = (share: number): string =>
  shares.find(([from]) => share >= from)?.[1] ?? '';
