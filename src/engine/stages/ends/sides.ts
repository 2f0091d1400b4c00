import type { Seen as SeenThrough } from '../../circuit/matching/seenThrough.ts';
import { seenThrough } from '../../circuit/matching/seenThrough.ts';
import type { EndsSeen } from './seen.ts';
import { type WayKey, waySteps } from './waySteps.ts';

/** One end of the filter. Ω. */
export interface Side {
  /** What really stands there. */
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
  const { sourceIs: is, sourceOwn, sourceOwnX, amplifierOutput, sourceWound, sourceBy: by } = seen;
  const r = is === 'own' ? sourceOwn : is === 'fifty' ? 50 : amplifierOutput;
  if (r === null) return null;
  const x = is === 'own' ? sourceOwnX : 0;
  return { r, x, wound: sourceWound ?? r, wants: seen.ends, by, centre: seen.centre };
}

/** The output's side; null while the amplifier behind it is not known. */
export function loadSide(seen: EndsSeen): Side | null {
  const { loadIs: is, loadOwn, loadOwnX, amplifierInput, loadWound, loadBy: by } = seen;
  const r = is === 'own' ? loadOwn : is === 'fifty' ? 50 : amplifierInput;
  if (r === null) return null;
  const x = is === 'own' ? loadOwnX : 0;
  return { r, x, wound: loadWound ?? r, wants: seen.endsLoad, by, centre: seen.centre };
}

/** Reactance under this share of the resistance is what rounding leaves: none. */
export const NO_REACTANCE = 1e-5;

/** What the filter sees of a side through a way of matching. */
export function seenBy(side: Side, way: WayKey): SeenThrough {
  const seen = seenThrough(side.r, side.x, waySteps(side, way));
  return Math.abs(seen.x) < NO_REACTANCE * seen.r ? { ...seen, x: 0 } : seen;
}
