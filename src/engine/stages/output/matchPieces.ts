import { piMatch } from '../../circuit/piMatch.ts';
import type { NetworkAsked } from './network.ts';
import { type Piece, plain } from './part.ts';

/** Parts of the pi match, where there is one, down to the filter's input resistance, Ω. */
export function matchPieces(
  { match, collectorLoad, loadedQ, nominal }: NetworkAsked,
  end: number,
): Piece[] {
  if (match !== 'pi') return [];
  const { sourceC, l, loadC } = piMatch(collectorLoad, end, loadedQ, nominal);
  return [
    plain('capacitor', sourceC, { of: 'piSource' }),
    plain('coil', l, { of: 'piCoil' }),
    plain('capacitor', loadC, { of: 'piLoad' }),
  ];
}
