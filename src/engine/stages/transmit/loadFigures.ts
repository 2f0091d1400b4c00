import { turnsRatio } from '../../circuit/turnsRatio.ts';
import { lMatch } from './lMatch.ts';

/**
 * What the final would give straight into the antenna, and the transformer or L-match that makes its
 * load.
 *
 * @param load wanted at the collector, in push-pull from collector to collector, Ω
 */
export function loadFigures(
  seen: {
    readonly supply: number;
    readonly saturation: number;
    readonly antenna: number;
    readonly frequency: number;
  },
  load: number,
  sides: 1 | 2,
) {
  const swing = sides * (seen.supply - seen.saturation);
  const { primary, secondary } = turnsRatio(seen.antenna / load, false);
  return {
    straightOn: swing ** 2 / (2 * seen.antenna),
    ratioNeeded: Math.sqrt(seen.antenna / load),
    ratioWords: `${primary} to ${secondary} turns, collector to antenna`,
    ...lMatch(load, seen.antenna, seen.frequency),
  };
}
