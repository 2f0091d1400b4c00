import type { Seen as SeenThrough } from '../../circuit/matching/seenThrough.ts';
import { seenThrough } from '../../circuit/matching/seenThrough.ts';
import type { EndsSeen } from './seen.ts';
import { type WayKey, waySteps } from './waySteps.ts';

/** One end of the filter. Ω. */
export interface Side {
  /** What stands there, as it is. */
  readonly gives: { readonly r: number; readonly x: number };
  /** The coil across it that tunes its capacitance out, H; null where there is none. */
  readonly coil: number | null;
  /** What is left, with the coil if one was asked for. */
  readonly r: number;
  readonly x: number;
  /** What the matching was worked out for. */
  readonly wound: number;
  /** What the filter wants to see. */
  readonly wants: number;
  readonly by: WayKey;
  readonly centre: number;
}

/** The input's side; null while the amplifier before it is not known. */
export function sourceSide(seen: EndsSeen): Side | null {
  const { sourceOwn, sourceOwnX, amplifierOutput, amplifierOutputC, centre } = seen;
  const gives = standing(
    seen.sourceIs,
    [sourceOwn, sourceOwnX],
    [amplifierOutput, amplifierOutputC],
    centre,
  );
  if (gives === null) return null;
  const by = { wants: seen.ends, by: seen.sourceBy, centre };
  return sideOf(gives, seen.sourceTuned === 'out', seen.sourceWound, by);
}

/** The output's side; null while the amplifier behind it is not known. */
export function loadSide(seen: EndsSeen): Side | null {
  const { loadOwn, loadOwnX, amplifierInput, amplifierInputC, centre } = seen;
  const gives = standing(
    seen.loadIs,
    [loadOwn, loadOwnX],
    [amplifierInput, amplifierInputC],
    centre,
  );
  if (gives === null) return null;
  const by = { wants: seen.endsLoad, by: seen.loadBy, centre };
  return sideOf(gives, seen.loadTuned === 'out', seen.loadWound, by);
}

/** What stands at an end, in series form, and the resistance that one would match it by. */
interface Standing {
  readonly r: number;
  readonly x: number;
  readonly matchedAs: number;
}

function standing(
  is: EndsSeen['sourceIs'],
  [ownR, ownX]: readonly [number, number],
  [amplifierR, amplifierC]: readonly [number | null, number | null],
  centre: number,
): Standing | null {
  if (is === 'own') return { r: ownR, x: ownX, matchedAs: ownR };
  if (is === 'fifty') return { r: 50, x: 0, matchedAs: 50 };
  if (amplifierR === null) return null;
  // An amplifier's resistance has its capacitance across it.
  const q = 2 * Math.PI * centre * amplifierR * (amplifierC ?? 0);
  const r = amplifierR / (1 + q * q);
  return { r, x: q === 0 ? 0 : -q * r, matchedAs: amplifierR };
}

function sideOf(
  { r, x, matchedAs }: Standing,
  wantsCoil: boolean,
  wound: number | null,
  rest: Pick<Side, 'wants' | 'by' | 'centre'>,
): Side {
  const gives = { r, x };
  // Only a capacitance can be tuned out by a coil across it.
  if (!wantsCoil || x >= 0) return { gives, coil: null, r, x, wound: wound ?? matchedAs, ...rest };
  const size = r * r + x * x;
  const coil = size / (-x * 2 * Math.PI * rest.centre);
  const left = size / r;
  return { gives, coil, r: left, x: 0, wound: wound ?? left, ...rest };
}

/** Reactance under this share of the resistance is what rounding leaves: none. */
export const NO_REACTANCE = 1e-5;

/** What the filter sees of a side through a way of matching. */
export function seenBy(side: Side, way: WayKey): SeenThrough {
  const seen = seenThrough(side.r, side.x, waySteps(side, way));
  return Math.abs(seen.x) < NO_REACTANCE * seen.r ? { ...seen, x: 0 } : seen;
}
