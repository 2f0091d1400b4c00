import { edgeForAttenuation, edgeForNotch } from '../../circuit/ellipticEdge.ts';
import { type EllipticPrototype, ellipticPrototype } from '../../circuit/ellipticPrototype.ts';
import type { NetworkAsked, Refusal } from './network.ts';

/** Stop band of an elliptic filter. */
export interface StopBand {
  /** Stop-band edge over ripple edge. */
  readonly ratio: number;
  readonly prototype: EllipticPrototype;
}

/** Nearer than this to the ripple edge no stop band is reckoned. */
export const NEAREST = 1.02;

type Asked = Pick<
  NetworkAsked,
  'order' | 'ripple' | 'cutoffRatio' | 'stopBy' | 'stopRatio' | 'stopWanted'
>;

let kept: { readonly by: string; readonly found: ReturnType<typeof found> } | null = null;

/** The elliptic prototype for what is asked, or why there is none. */
export function stopBand(asked: Asked): ReturnType<typeof found> {
  const { order, ripple, cutoffRatio, stopBy, stopRatio, stopWanted } = asked;
  // Most changes of a rig leave the filter as it is.
  const by = `${order} ${ripple} ${stopBy} ${stopBy === 'edge' ? stopRatio : stopBy === 'notch' ? cutoffRatio : stopWanted}`;
  if (kept?.by !== by) kept = { by, found: found(asked) };
  return kept.found;
}

function found(asked: Asked): StopBand | { readonly refusal: Refusal; readonly least: number } {
  const { order, ripple } = asked;
  if (order % 2 === 0 || order > 7) {
    return { refusal: 'ellipticOrder', least: Math.min(7, order + 1) };
  }
  if (asked.stopBy === 'notch' && 2 / asked.cutoffRatio < NEAREST) {
    return { refusal: 'notchTooNear', least: 1.6 };
  }
  const ratio = ratioOf(asked);
  if (ratio < NEAREST) return { refusal: 'tooSteep', least: ratio };
  const prototype = ellipticPrototype(order, ripple, ratio);
  const values = [...prototype.shunts, ...prototype.traps.flatMap(({ l, c }) => [l, c])];
  if (!values.every((g) => g > 1e-3)) return { refusal: 'tooSteep', least: ratio };
  return { ratio, prototype };
}

function ratioOf({ order, ripple, cutoffRatio, stopBy, stopRatio, stopWanted }: Asked): number {
  if (stopBy === 'edge') return stopRatio;
  return stopBy === 'notch'
    ? edgeForNotch(order, 2 / cutoffRatio)
    : edgeForAttenuation(order, ripple, stopWanted);
}
