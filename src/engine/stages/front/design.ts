import type { CoupledCircuits } from '../../circuit/coupledCircuits.ts';
import { nearest } from '../../quantity/preferred.ts';

/** Loaded Q of the end circuits over f₀/B, and coupling over B/f₀, of a Butterworth response. */
export const BUTTERWORTH = {
  2: { q: Math.SQRT2, k: Math.SQRT1_2 },
  3: { q: 1, k: Math.SQRT1_2 },
} as const;

export interface FrontAsked {
  readonly nominal: number;
  readonly circuits: 2 | 3;
  readonly width: number;
  readonly coil: number;
  readonly coilQ: number;
  readonly end: number;
  readonly fitted: 'exact' | 'e24' | 'e12';
}

/** The parts, or why there are none. */
export type FrontMade =
  | {
      readonly network: CoupledCircuits;
      readonly loadedQ: number;
      /** F, not rounded. */
      readonly feedExact: number;
      readonly coupleExact: number;
    }
  | { readonly refusal: 'lossy'; readonly least: number }
  | { readonly refusal: 'wide' };

/**
 * Parts of a Butterworth band-pass from coupled circuits.
 *
 * The ends give the end circuits their loaded Q through a small capacitor: R_e in series with it
 * looks like a high resistance and a capacitor side by side at f₀. Coils' losses are counted in.
 *
 * Source: coupled-resonator design by k and q (Zverev, Handbook of Filter Synthesis, 1967).
 */
export function designFront(asked: FrontAsked): FrontMade {
  const { nominal, circuits, width, coil, coilQ, end } = asked;
  const { q, k } = BUTTERWORTH[circuits];
  const loadedQ = (q * nominal) / width;
  if (loadedQ >= 0.9 * coilQ) {
    return { refusal: 'lossy', least: (q * nominal) / (0.9 * coilQ) };
  }
  const w = 2 * Math.PI * nominal;
  const parallel = (w * coil) / (1 / loadedQ - 1 / coilQ);
  if (parallel <= 1.05 * end) return { refusal: 'wide' };
  const feedQ = Math.sqrt(parallel / end - 1);
  const round = (c: number): number =>
    asked.fitted === 'exact' ? c : nearest(c, asked.fitted === 'e24' ? 'E24' : 'E12');
  const feedExact = 1 / (w * end * feedQ);
  const feed = round(feedExact);
  const node = 1 / (w * w * coil);
  const coupleExact = (k * width * node) / nominal;
  const couple = round(coupleExact);
  // What the feed capacitor as fitted adds to the circuit; the trimmer makes up for it.
  const x = 1 / (w * feed * end);
  const endC = node - couple - (feed * x * x) / (1 + x * x);
  const middleC = circuits === 3 ? node - 2 * couple : 0;
  if (endC <= 0 || (circuits === 3 && middleC <= 0)) return { refusal: 'wide' };
  return {
    network: { nominal, circuits, coil, coilQ, couple, feed, endC, middleC, end },
    loadedQ,
    feedExact,
    coupleExact,
  };
}
