import { bracketedMaximum } from './bracketedMaximum.ts';
import { bracketedRoot } from './bracketedRoot.ts';
import { type Couplings, couplingLoss } from './couplings.ts';
import { type Crystal, parallelResonance, seriesResonance } from './crystal.ts';
import type { Fittings } from './crystalLadder.ts';
import type { Ladder } from './ladder.ts';
import { type LadderShape, seriesShape, shuntShape } from './ladderShape.ts';
import { type Passband, passband } from './passband.ts';

/** Where the crystals stand and what is fitted to them. */
export interface Arrangement extends Fittings {
  /** Left out for crystals in series. */
  readonly form?: 'series' | 'shunt';
  /** Capacitance across every crystal to ground, F; null or left out: what suits the width. */
  readonly across?: number | null;
}

/** One ladder of the family, with its losses: the exact values for an h and what they give. */
export interface Trial {
  /** Half the span of reactance (Ω), of susceptance (S) in the shunt form. */
  readonly h: number;
  readonly shape: LadderShape;
  readonly ladder: Ladder;
  readonly band: Passband;
  /** Width between the −3 dB points, Hz. */
  readonly width: number;
}

/** A ladder made for a width. */
export interface LadderForWidth extends Trial {
  /**
   * `met`: the width is the one asked for. `wide`: more than the crystals can, this is the widest.
   * `narrow`: less than their losses allow. `gap`: the family has no such width with these losses,
   * because its outermost hump sinks below −3 dB there; this is the nearest.
   */
  readonly outcome: 'met' | 'wide' | 'narrow' | 'gap';
  /** The widest that the family can be with these crystals. */
  readonly widest: Trial;
}

/** Below this gain nobody would call it a filter, dB. */
const LEAST_GAIN = -200;

/** How much of the greatest width is used where capacitors across the crystals may be chosen. */
const SHARES = [0.95, 0.85, 0.65, 0.4, 0.2];

/**
 * The ladder whose −3 dB width, losses of crystals and capacitors included, is the one asked for.
 *
 * The width is a function of h alone; the smallest h that gives it is found by bracketing, the
 * greatest width over all h by search. In the shunt form the smallest h is the one farthest from fs,
 * which stops best far away but takes the smallest coupling capacitors. A capacitor across every
 * crystal brings the greatest width down towards the one asked for and makes them as large as they
 * can be; unless it is given, it is chosen for that.
 *
 * @param width between the −3 dB points, Hz
 */
export function ladderForWidth(
  crystal: Crystal,
  couplings: Couplings,
  arrangement: Arrangement,
  width: number,
): LadderForWidth {
  const { form, across = null, stray } = arrangement;
  const ratio = deepestDip(couplings) > 1.2 ? CLOSE : USUAL;
  const shape =
    form === 'shunt'
      ? shuntShape(crystal, couplings, arrangement, across ?? 0)
      : seriesShape(crystal, couplings, arrangement);
  const widest = widestTrial(shape, ratio);
  if (width > widest.width) return { ...widest, outcome: 'wide', widest };
  if (form === 'shunt' && across === null) {
    // The greatest width goes as one over C0; two crystals have none, and half of fp − fs serves.
    const own = crystal.c0 + stray;
    const greatest = shape.limited
      ? widest.width
      : (parallelResonance({ ...crystal, c0: own }) - seriesResonance(crystal)) / 2;
    for (const share of SHARES) {
      const more = own * ((share * greatest) / width - 1);
      if (more <= 0) break;
      const padded = shuntShape(crystal, couplings, arrangement, more);
      const top = trial(padded, padded.scale, FINE);
      if (top.width < width) continue;
      const made = nearestTrial(padded, ratio, width, top);
      if (made.outcome === 'met') return { ...made, widest };
    }
  }
  return { ...nearestTrial(shape, ratio, width, widest), widest };
}

/** Step from one h to the next when looking around. Deep dips make the outermost hump sink below
 * −3 dB now and then: look more closely. */
const USUAL = 1.15;
const CLOSE = 1.04;

const FINE = 2e-9;
const COARSE = 1e-3;

function trial(shape: LadderShape, h: number, tolerance: number): Trial {
  const ladder = shape.ladder(h);
  const band = passband(ladder, shape.frequencies(h), tolerance);
  return { h, shape, ladder, band, width: band.high - band.low };
}

/** The greatest width over all h. Of several humps of nearly the same width, the best is taken. */
function widestTrial(shape: LadderShape, ratio: number): Trial {
  const { scale, limited } = shape;
  const limit = limited ? 3 : 1;
  const hs: number[] = [];
  const last = Math.log(limit / 0.5) / Math.log(ratio);
  for (let i = 0; i <= Math.ceil(last); i += 1) hs.push(scale * Math.min(0.5 * ratio ** i, limit));
  const widths = hs.map((h) => trial(shape, h, COARSE).width);
  const best = Math.max(...widths);
  let widest = trial(shape, hs[widths.indexOf(best)] ?? scale, FINE);
  const finer = (h: number) => trial(shape, h, 1e-5).width;
  const humps = hs
    .map((_, i) => i)
    .filter((i) => isHump(widths, i) && (widths[i] ?? 0) > best * 0.985)
    .sort((i, j) => (widths[j] ?? 0) - (widths[i] ?? 0))
    .slice(0, 3);
  for (const i of humps) {
    const [left, right] = [hs[i - 1] ?? hs[i] ?? 0, hs[i + 1] ?? hs[i] ?? 0];
    const { at, value } = bracketedMaximum(finer, left, right, scale * 1e-5);
    if (value > widest.width) widest = trial(shape, at, FINE);
  }
  return widest;
}

const isHump = (widths: readonly number[], i: number) =>
  (widths[i] ?? 0) >= (widths[i - 1] ?? 0) && (widths[i] ?? 0) >= (widths[i + 1] ?? 0);

/** The smallest h whose width is the one asked for, or the nearest there is. */
function nearestTrial(
  shape: LadderShape,
  ratio: number,
  width: number,
  widest: Trial,
): Omit<LadderForWidth, 'widest'> {
  const over = (h: number) => trial(shape, h, COARSE).width - width;
  let below = Math.min(shape.hFor(width) ?? widest.h, widest.h) * 0.9;
  let offBelow = over(below);
  while (offBelow > 0) {
    below /= ratio ** 2;
    const least = trial(shape, below, FINE);
    if (least.band.gain < LEAST_GAIN) return { ...least, outcome: 'narrow' };
    offBelow = least.width - width;
  }
  let nearest: Trial | undefined;
  for (;;) {
    const above = Math.min(below * ratio, widest.h);
    const offAbove = above === widest.h ? widest.width - width : over(above);
    if (offBelow <= 0 !== offAbove <= 0) {
      const found = crossing(shape, width, below, above);
      if (Math.abs(found.width - width) < 1e-6 * width) return { ...found, outcome: 'met' };
      if (!nearest || Math.abs(found.width - width) < Math.abs(nearest.width - width)) {
        nearest = found;
      }
    }
    // Past a jump the width may come back to what was asked for, but not much later.
    if (above >= widest.h || (nearest && above > nearest.h * 2)) break;
    below = above;
    offBelow = offAbove;
  }
  return { ...(nearest ?? widest), outcome: 'gap' };
}

/** The trial at a crossing; where the width jumps over what is asked for, the nearer side. */
function crossing(shape: LadderShape, width: number, below: number, above: number): Trial {
  const over = (h: number) => trial(shape, h, FINE).width - width;
  const h = bracketedRoot(over, below, above, below * 1e-14);
  const found = trial(shape, h, FINE);
  if (Math.abs(found.width - width) < 1e-6 * width) return found;
  const sides = [h, h * (1 - 1e-12), h * (1 + 1e-12)].map((side) => trial(shape, side, FINE));
  const off = (side: Trial) => Math.abs(side.width - width);
  return sides.reduce((best, side) => (off(side) < off(best) ? side : best));
}

/** The deepest dip of the lossless response inside its half-power points, dB. */
function deepestDip(couplings: Couplings): number {
  const steps = 16 * (couplings.k.length + 1);
  const loss = (i: number) => couplingLoss(couplings, Math.sin((Math.PI * i) / (2 * steps)));
  let deepest = 0;
  let last = loss(0);
  let rising = true;
  for (let i = 1; i <= steps; i += 1) {
    const here = loss(i);
    if (rising && here < last) deepest = Math.max(deepest, last);
    rising = here > last;
    last = here;
  }
  return deepest;
}
