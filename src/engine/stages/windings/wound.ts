import { turnsForReactance } from '../../circuit/broadbandTransformer.ts';
import { ferritePermeability } from '../../circuit/ferritePermeability.ts';
import { fluxGuide } from '../../circuit/toroid.ts';
import { TURNS_TOLERANCE } from '../../circuit/turnsRatio.ts';
import type { Former } from './former.ts';
import type { WindingsSeen } from './seen.ts';
import type { TransformerWanted } from './transformersWanted.ts';

/** Turns of both windings on a former, and the permeability that they follow from. */
export interface Wound {
  readonly stores: number;
  readonly loses: number;
  /** Turns on the winding with fewer of them: by impedance, by flux. Not rounded. */
  readonly turnsExact: number;
  readonly turnsFlux: number | null;
  readonly turns: number;
  readonly secondTurns: number;
  /** All turns that have to find room. */
  readonly all: number;
}

/** What the rule for impedance and flux makes of a wanted transformer on a former. */
export function wound(
  wanted: TransformerWanted,
  former: Former,
  seen: Pick<WindingsSeen, 'nominal' | 'reactanceTimes'>,
): Wound {
  const { first, ratio, power } = wanted;
  const { stores, loses } = ferritePermeability(former.ferrite.curve, seen.nominal);
  const left = Math.hypot(stores, loses) / former.ferrite.permeability;
  const few = Math.min(1, 1 / ratio);
  const turnsExact =
    few * turnsForReactance(first, seen.reactanceTimes, former.al, left, seen.nominal);
  const guide = Math.SQRT2 * Math.PI * former.area * seen.nominal * fluxGuide(seen.nominal);
  const turnsFlux = power === null ? null : (few * Math.sqrt(power * first)) / guide;
  const [turns, secondTurns] = wholeTurns(wanted, turnsExact, turnsFlux);
  const all =
    wanted.kind === 'trifilar'
      ? 3 * turns
      : (wanted.tapped === 'first' ? 2 : 1) * turns +
        (wanted.tapped === 'second' ? 2 : 1) * secondTurns;
  return { stores, loses, turnsExact, turnsFlux, turns, secondTurns, all };
}

/**
 * Whole turns of both windings. Where the ratio is made of whole turns both are multiplied; where
 * it is free, the smaller winding grows until the ratio is met within 4 %.
 */
function wholeTurns(
  { kind, ratio, whole, asked }: TransformerWanted,
  turnsExact: number,
  turnsFlux: number | null,
): [number, number] {
  const least = Math.max(1, Math.ceil(Math.max(turnsExact, turnsFlux ?? 0)));
  if (kind === 'trifilar') return [asked ?? least, asked ?? least];
  if (whole) {
    const k = Math.ceil(least / Math.min(...whole));
    return [k * whole[0], k * whole[1]];
  }
  const few = growUntilMet(least, Math.max(ratio, 1 / ratio));
  const many = Math.round(few * Math.max(ratio, 1 / ratio));
  return ratio >= 1 ? [many, few] : [few, many];
}

/** The fewest turns, from `least` on, whose product with the ratio is whole within 4 %. */
function growUntilMet(least: number, steep: number): number {
  let few = least;
  while (Math.abs(Math.round(few * steep) / (few * steep) - 1) > TURNS_TOLERANCE) few += 1;
  return few;
}
