import type { Couplings } from './couplings.ts';
import { type Crystal, frequencyAtReactance, seriesResonance } from './crystal.ts';
import { crystalLadder, type Fittings, largestSum } from './crystalLadder.ts';
import type { Ladder } from './ladder.ts';
import { halfSpanFor, spanFrequencies, widestHalfSpan } from './reactanceSpan.ts';
import { shuntLadder } from './shuntLadder.ts';
import {
  frequencyAtSusceptance,
  halfSusceptanceFor,
  largestHalfSusceptance,
  susceptanceFrequencies,
  widestHalfSusceptance,
} from './susceptanceSpan.ts';

/**
 * Ladders of one kind, of which one number is still free: h, half the span of the crystal's
 * reactance (Ω) over the passband, or in the shunt form of its susceptance (S).
 */
export interface LadderShape {
  readonly couplings: Couplings;
  readonly largestSum: number;
  /** The h of the greatest lossless width, or where looking for it stops. */
  readonly scale: number;
  /** Whether there is a greatest lossless width. */
  readonly limited: boolean;
  /** Capacitance fitted across every crystal, F: in the shunt form only. */
  readonly across: number;
  readonly ladder: (h: number) => Ladder;
  /** Frequencies at which to look for humps and edges, Hz. */
  readonly frequencies: (h: number, margin?: number) => number[];
  /** The smallest h of a lossless width in Hz; null for more than the greatest. */
  readonly hFor: (width: number) => number | null;
  /** Where every mesh or node resonates by itself, Hz. */
  readonly alignment: (h: number) => number;
}

/** Two crystals have no widest: h stops where their coupling is hardly more than the holders. */
const LARGEST_H_TIMES_WC0 = 2;

/** Crystals in series from source to load. */
export function seriesShape(
  crystal: Crystal,
  couplings: Couplings,
  fittings: Fittings,
): LadderShape {
  const a = largestSum(couplings);
  const n = couplings.k.length + 1;
  const widest = widestHalfSpan(crystal, a);
  return {
    couplings,
    largestSum: a,
    scale: widest ?? LARGEST_H_TIMES_WC0 / (2 * Math.PI * seriesResonance(crystal) * crystal.c0),
    limited: widest !== null,
    across: 0,
    ladder: (h) => crystalLadder(crystal, couplings, h, fittings),
    frequencies: (h, margin) => spanFrequencies(crystal, a, h, n, margin),
    hFor: (width) => halfSpanFor(crystal, a, width),
    alignment: (h) => frequencyAtReactance(crystal, h * a),
  };
}

/** Crystals to ground. */
export function shuntShape(
  crystal: Crystal,
  couplings: Couplings,
  fittings: Fittings,
  across: number,
): LadderShape {
  const a = largestSum(couplings);
  const n = couplings.k.length + 1;
  const whole = { ...crystal, c0: crystal.c0 + fittings.stray + across };
  const widest = widestHalfSusceptance(whole, a);
  const scale = widest ?? largestHalfSusceptance(whole, a);
  return {
    couplings,
    largestSum: a,
    scale,
    limited: widest !== null,
    across,
    ladder: (h) => shuntLadder(crystal, couplings, h, fittings, across),
    frequencies: (h, margin) => susceptanceFrequencies(whole, a, h, n, margin),
    hFor: (width) => halfSusceptanceFor(whole, a, width, scale),
    alignment: (h) => frequencyAtSusceptance(whole, h * a),
  };
}
