import { bracketedMaximum } from './bracketedMaximum.ts';
import { bracketedRoot } from './bracketedRoot.ts';
import { type Couplings, couplingLoss } from './couplings.ts';
import { type Crystal, seriesResonance } from './crystal.ts';
import { crystalLadder, type Fittings, largestSum } from './crystalLadder.ts';
import type { Ladder } from './ladder.ts';
import { type Passband, passband } from './passband.ts';
import { halfSpanFor, spanFrequencies, widestHalfSpan } from './reactanceSpan.ts';

/** One ladder of the family, with its losses: the exact values for an h and what they give. */
export interface Trial {
  /** Half the reactance span, Ω. */
  readonly h: number;
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

/** Two crystals have no widest: h stops where their coupling is hardly more than the holders. */
const LARGEST_H_TIMES_WC0 = 2;

/**
 * The ladder whose −3 dB width, losses of crystals and capacitors included, is the one asked for.
 *
 * The width is a function of h alone; the smallest h that gives it is found by bracketing, the
 * greatest width over all h by search.
 *
 * @param width between the −3 dB points, Hz
 */
export function ladderForWidth(
  crystal: Crystal,
  couplings: Couplings,
  fittings: Fittings,
  width: number,
): LadderForWidth {
  const largest = largestSum(couplings);
  const family: Family = {
    crystal,
    couplings,
    fittings,
    largest,
    // Deep dips make the outermost hump sink below −3 dB now and then: look more closely.
    ratio: deepestDip(couplings) > 1.2 ? 1.04 : 1.15,
    scale:
      widestHalfSpan(crystal, largest) ??
      LARGEST_H_TIMES_WC0 / (2 * Math.PI * seriesResonance(crystal) * crystal.c0),
    limit: largest > 1 ? 3 : 1,
  };
  const widest = widestTrial(family);
  if (width > widest.width) return { ...widest, outcome: 'wide', widest };
  return { ...nearestTrial(family, width, widest), widest };
}

interface Family {
  readonly crystal: Crystal;
  readonly couplings: Couplings;
  readonly fittings: Fittings;
  readonly largest: number;
  /** Step from one h to the next when looking around. */
  readonly ratio: number;
  /** The h of the greatest lossless width, Ω. */
  readonly scale: number;
  /** How many times that h to look at. */
  readonly limit: number;
}

const FINE = 2e-9;
const COARSE = 1e-3;

function trial(family: Family, h: number, tolerance: number): Trial {
  const { crystal, couplings, fittings, largest } = family;
  const ladder = crystalLadder(crystal, couplings, h, fittings);
  const around = spanFrequencies(crystal, largest, h, ladder.lm.length);
  const band = passband(ladder, around, tolerance);
  return { h, ladder, band, width: band.high - band.low };
}

/** The greatest width over all h. Of several humps of nearly the same width, the best is taken. */
function widestTrial(family: Family): Trial {
  const { scale, limit, ratio } = family;
  const hs: number[] = [];
  const last = Math.log(limit / 0.5) / Math.log(ratio);
  for (let i = 0; i <= Math.ceil(last); i += 1) hs.push(scale * Math.min(0.5 * ratio ** i, limit));
  const widths = hs.map((h) => trial(family, h, COARSE).width);
  const best = Math.max(...widths);
  let widest = trial(family, hs[widths.indexOf(best)] ?? scale, FINE);
  const finer = (h: number) => trial(family, h, 1e-5).width;
  const humps = hs
    .map((_, i) => i)
    .filter((i) => isHump(widths, i) && (widths[i] ?? 0) > best * 0.985)
    .sort((i, j) => (widths[j] ?? 0) - (widths[i] ?? 0))
    .slice(0, 3);
  for (const i of humps) {
    const [left, right] = [hs[i - 1] ?? hs[i] ?? 0, hs[i + 1] ?? hs[i] ?? 0];
    const { at, value } = bracketedMaximum(finer, left, right, scale * 1e-5);
    if (value > widest.width) widest = trial(family, at, FINE);
  }
  return widest;
}

const isHump = (widths: readonly number[], i: number) =>
  (widths[i] ?? 0) >= (widths[i - 1] ?? 0) && (widths[i] ?? 0) >= (widths[i + 1] ?? 0);

/** The smallest h whose width is the one asked for, or the nearest there is. */
function nearestTrial(
  family: Family,
  width: number,
  widest: Trial,
): Omit<LadderForWidth, 'widest'> {
  const over = (h: number) => trial(family, h, COARSE).width - width;
  let below =
    Math.min(halfSpanFor(family.crystal, family.largest, width) ?? widest.h, widest.h) * 0.9;
  let offBelow = over(below);
  while (offBelow > 0) {
    below /= family.ratio ** 2;
    const least = trial(family, below, FINE);
    if (least.band.gain < LEAST_GAIN) return { ...least, outcome: 'narrow' };
    offBelow = least.width - width;
  }
  let nearest: Trial | undefined;
  for (;;) {
    const above = Math.min(below * family.ratio, widest.h);
    const offAbove = above === widest.h ? widest.width - width : over(above);
    if (offBelow <= 0 !== offAbove <= 0) {
      const found = crossing(family, width, below, above);
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
function crossing(family: Family, width: number, below: number, above: number): Trial {
  const over = (h: number) => trial(family, h, FINE).width - width;
  const h = bracketedRoot(over, below, above, below * 1e-14);
  const found = trial(family, h, FINE);
  if (Math.abs(found.width - width) < 1e-6 * width) return found;
  const sides = [h, h * (1 - 1e-12), h * (1 + 1e-12)].map((side) => trial(family, side, FINE));
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
