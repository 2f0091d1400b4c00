import { halfWave } from '../../circuit/halfWave.ts';
import { lowpassFromPrototype } from '../../circuit/lowpassFromPrototype.ts';
import { capacitor, coil, type OutputLadder } from '../../circuit/outputLadder.ts';
import { leastPiQ, piMatch } from '../../circuit/piMatch.ts';
import { butterworth, chebyshev } from '../../circuit/prototype.ts';
import { type TurnsRatio, turnsRatio } from '../../circuit/turnsRatio.ts';
import { nearest, type Series } from '../../quantity/preferred.ts';

/** What the network is made from. */
export interface NetworkAsked {
  readonly nominal: number;
  readonly antenna: number;
  readonly collectorLoad: number;
  readonly match: 'pi' | 'transformer' | 'none';
  readonly loadedQ: number;
  readonly lowpass: 'none' | 'halfWave' | 'doubleHalfWave' | 'butterworth' | 'chebyshev';
  readonly order: number;
  readonly cutoffRatio: number;
  readonly ripple: number;
  readonly fitted: 'exact' | 'e24' | 'e12' | 'e6';
}

/** Where a part, or its share of a part, comes from: the workings show the formula for each. */
export type Share =
  | { readonly of: 'piSource' | 'piCoil' | 'piLoad' | 'halfCoil' | 'halfCapacitor' }
  | { readonly of: 'prototype'; readonly g: number };

/** One part of the network, from the collector on: capacitors to ground, coils in the path. */
export interface Part {
  readonly label: string;
  readonly kind: 'capacitor' | 'coil';
  /** F or H. */
  readonly exact: number;
  /** F or H. */
  readonly fitted: number;
  readonly shares: readonly Share[];
}

/** The network, or why there is none. */
export type Network =
  | {
      readonly parts: readonly Part[];
      readonly turns: TurnsRatio | null;
      readonly cutoff: number | null;
    }
  | { readonly refusal: 'piQ' | 'evenChebyshev'; readonly least: number };

/** Parts of the network, exact and as fitted. Neighbouring capacitors are one part. */
export function network(asked: NetworkAsked): Network {
  const { nominal, antenna, collectorLoad, match, loadedQ, lowpass, order, fitted } = asked;
  const least = leastPiQ(collectorLoad, antenna);
  if (match === 'pi' && loadedQ < least) return { refusal: 'piQ', least };
  if (lowpass === 'chebyshev' && order % 2 === 0) {
    return { refusal: 'evenChebyshev', least: order < 9 ? order + 1 : order - 1 };
  }
  const pieces = [...matching(asked), ...filtering(asked)];
  return {
    parts: named(joined(pieces), fitted),
    turns: match === 'transformer' ? turnsRatio(antenna / collectorLoad, fitted === 'exact') : null,
    cutoff:
      lowpass === 'butterworth' || lowpass === 'chebyshev' ? asked.cutoffRatio * nominal : null,
  };
}

interface Piece {
  readonly kind: Part['kind'];
  readonly value: number;
  readonly shares: readonly Share[];
}

function matching({ match, collectorLoad, antenna, loadedQ, nominal }: NetworkAsked): Piece[] {
  if (match !== 'pi') return [];
  const { sourceC, l, loadC } = piMatch(collectorLoad, antenna, loadedQ, nominal);
  return [
    { kind: 'capacitor', value: sourceC, shares: [{ of: 'piSource' }] },
    { kind: 'coil', value: l, shares: [{ of: 'piCoil' }] },
    { kind: 'capacitor', value: loadC, shares: [{ of: 'piLoad' }] },
  ];
}

function filtering(asked: NetworkAsked): Piece[] {
  const { lowpass, order, ripple, antenna, nominal, cutoffRatio } = asked;
  if (lowpass === 'none') return [];
  if (lowpass === 'halfWave' || lowpass === 'doubleHalfWave') {
    const { l, c } = halfWave(antenna, nominal);
    const end: Piece = { kind: 'capacitor', value: c, shares: [{ of: 'halfCapacitor' }] };
    const section: Piece[] = [end, { kind: 'coil', value: l, shares: [{ of: 'halfCoil' }] }, end];
    return lowpass === 'halfWave' ? section : [...section, ...section];
  }
  const { g } = lowpass === 'butterworth' ? butterworth(order) : chebyshev(order, ripple);
  const own = g.slice(1, order + 1);
  return lowpassFromPrototype(own, antenna, cutoffRatio * nominal).map((value, k) => ({
    kind: k % 2 === 0 ? 'capacitor' : 'coil',
    value,
    shares: [{ of: 'prototype', g: own[k] ?? 0 }],
  }));
}

/** Puts capacitors that stand at one point together. */
function joined(pieces: readonly Piece[]): Piece[] {
  const out: Piece[] = [];
  for (const piece of pieces) {
    const last = out.at(-1);
    if (last && last.kind === 'capacitor' && piece.kind === 'capacitor') {
      out[out.length - 1] = {
        kind: 'capacitor',
        value: last.value + piece.value,
        shares: [...last.shares, ...piece.shares],
      };
    } else out.push(piece);
  }
  // At its least Q a pi match has no capacitor at the lower end.
  return out.filter(({ value }) => value > 1e-16);
}

function named(pieces: readonly Piece[], fitted: NetworkAsked['fitted']): Part[] {
  let coilsSoFar = 0;
  let capacitorsSoFar = 0;
  return pieces.map(({ kind, value, shares }) => {
    const number = kind === 'coil' ? ++coilsSoFar : ++capacitorsSoFar;
    const round = kind === 'capacitor' && fitted !== 'exact';
    return {
      label: `${kind === 'coil' ? 'L' : 'C'}${number}`,
      kind,
      exact: value,
      fitted: round ? nearest(value, fitted.toUpperCase() as Series) : value,
      shares,
    };
  });
}

/** The network as a ladder for analysis, with losses and strays. */
export function ladderOf(
  parts: readonly Part[],
  turns: TurnsRatio | null,
  real: {
    readonly nominal: number;
    readonly antenna: number;
    readonly coilQ: number;
    readonly capacitorQ: number;
    readonly selfCapacitance: number;
  },
  sourceResistance: number,
): OutputLadder {
  return {
    branches: parts.map(({ kind, fitted }) =>
      kind === 'coil'
        ? coil('series', fitted, real.coilQ, real.selfCapacitance)
        : capacitor('shunt', fitted, real.capacitorQ),
    ),
    ratio: turns?.ratio ?? 1,
    sourceResistance,
    sourceCapacitance: 0,
    load: real.antenna,
    reference: real.nominal,
  };
}
