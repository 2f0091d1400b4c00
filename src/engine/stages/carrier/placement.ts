import type { Ladder } from '../../circuit/ladder.ts';
import { skirt as followSkirt } from '../../circuit/passband.ts';
import type { RuleName } from './ruleNames.ts';
import type { Gain } from './tones.ts';

/** How far from the passband’s edge a carrier can still belong to the filter, Hz. */
export const SKIRT = 20_000;

/** A filter as the carrier meets it: edges in Hz, levels in dB. */
export interface Skirt {
  readonly ladder: Ladder;
  readonly gain: Gain;
  /** Loss at the passband's best point, dB. */
  readonly loss: number;
  readonly low3: number;
  readonly high3: number;
  readonly low6: number;
  readonly high6: number;
  /** +1 where the carrier goes above the passband, −1 below. */
  readonly way: 1 | -1;
}

/** Edge of the passband that faces the carrier, at −6 dB, Hz. */
export const facingEdge = ({ way, high6, low6 }: Skirt): number => (way === 1 ? high6 : low6);

/** Attenuation below the passband's best point, dB. */
export const attenuationAt = ({ gain, loss }: Skirt, f: number): number => -gain(f) - loss;

/** Where each rule puts the carrier, Hz; null where it cannot say. */
export function placements(
  skirt: Skirt,
  given: { attenuation: number; offset: number; frequency: number | null },
): Record<Exclude<RuleName, 'nearest'>, number | null> {
  const edge = facingEdge(skirt);
  return {
    attenuation: followSkirt(
      skirt.ladder,
      -skirt.loss - given.attenuation,
      edge,
      skirt.way * 40,
      SKIRT,
      1e-9,
    ),
    offset: edge + skirt.way * given.offset,
    frequency: given.frequency,
  };
}
