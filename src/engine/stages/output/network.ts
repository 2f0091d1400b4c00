import { leastPiQ } from '../../circuit/piMatch.ts';
import { chebyshev } from '../../circuit/prototype.ts';
import { type TurnsRatio, turnsRatio } from '../../circuit/turnsRatio.ts';
import { filterPieces } from './filterPieces.ts';
import { matchPieces } from './matchPieces.ts';
import type { Part, Piece } from './part.ts';
import { type StopBand, stopBand } from './stopBand.ts';
import { canTrap, withTraps } from './withTraps.ts';

/** What the network is made from. */
export interface NetworkAsked {
  readonly nominal: number;
  readonly antenna: number;
  readonly collectorLoad: number;
  readonly match: 'pi' | 'transformer' | 'none';
  readonly loadedQ: number;
  readonly lowpass:
    | 'none'
    | 'halfWave'
    | 'doubleHalfWave'
    | 'butterworth'
    | 'chebyshev'
    | 'elliptic';
  readonly order: number;
  readonly cutoffRatio: number;
  readonly ripple: number;
  readonly traps: 'none' | 'second' | 'third' | 'both';
  readonly stopBy: 'notch' | 'edge' | 'attenuation';
  readonly stopRatio: number;
  readonly stopWanted: number;
  readonly fitted: string;
}

/** The network with exact values, or why there is none. */
export type Network =
  | {
      readonly parts: readonly Part[];
      readonly turns: TurnsRatio | null;
      readonly cutoff: number | null;
      /** Resistance that the filter shows and wants to see at its input, Ω. */
      readonly end: number;
      readonly stop: StopBand | null;
    }
  | { readonly refusal: Refusal; readonly least: number };

/** Why there is no such network; `least` holds the figure that would do, or was found. */
export type Refusal =
  | 'piQ'
  | 'evenChebyshev'
  | 'ellipticOrder'
  | 'notchTooNear'
  | 'tooSteep'
  | 'trapCoils';

/** Parts of the network with their exact values. Neighbouring capacitors are one part. */
export function network(asked: NetworkAsked): Network {
  const { nominal, antenna, collectorLoad, match, loadedQ, lowpass, order } = asked;
  const end = antenna * unequalBy(asked);
  if (match === 'none' && end !== antenna) {
    return { refusal: 'evenChebyshev', least: order < 9 ? order + 1 : order - 1 };
  }
  const least = leastPiQ(collectorLoad, end);
  if (match === 'pi' && loadedQ < least) return { refusal: 'piQ', least };
  const stop = lowpass === 'elliptic' ? stopBand(asked) : null;
  if (stop && 'refusal' in stop) return stop;
  const filter = filterPieces(asked, end, stop);
  if (!canTrap(filter, asked)) return { refusal: 'trapCoils', least: 2 };
  const pieces = [...matchPieces(asked, end), ...withTraps(filter, asked)];
  return {
    parts: named(joined(pieces)),
    turns:
      match === 'transformer' ? turnsRatio(end / collectorLoad, asked.fitted === 'exact') : null,
    cutoff: hasCutoff(lowpass) ? asked.cutoffRatio * nominal : null,
    end,
    stop,
  };
}

const hasCutoff = (lowpass: NetworkAsked['lowpass']): boolean =>
  lowpass === 'butterworth' || lowpass === 'chebyshev' || lowpass === 'elliptic';

/** Input over output resistance: a Chebyshev filter of even order has unequal ends. */
function unequalBy({ lowpass, order, ripple }: NetworkAsked): number {
  if (lowpass !== 'chebyshev' || order % 2 === 1) return 1;
  return chebyshev(order, ripple).g[order + 1] ?? 1;
}

/** Puts capacitors that stand at one point together. */
function joined(pieces: readonly Piece[]): Piece[] {
  const out: Piece[] = [];
  for (const piece of pieces) {
    const last = out.at(-1);
    if (last && last.kind === 'capacitor' && piece.kind === 'capacitor') {
      out[out.length - 1] = {
        ...last,
        value: last.value + piece.value,
        shares: [...last.shares, ...piece.shares],
      };
    } else out.push(piece);
  }
  // At its least Q a pi match has no capacitor at the lower end.
  return out.filter(({ value }) => value > 1e-16);
}

function named(pieces: readonly Piece[]): Part[] {
  let coils = 0;
  let capacitors = 0;
  return pieces.map(({ kind, value, shares, notch, order }) => ({
    label: kind === 'coil' ? `L${++coils}` : `C${++capacitors}`,
    kind,
    exact: value,
    shares,
    notch,
    order,
  }));
}
