import { trapBranch } from '../../circuit/trapBranch.ts';
import type { NetworkAsked } from './network.ts';
import type { Piece } from './part.ts';

type Asked = Pick<NetworkAsked, 'traps' | 'lowpass' | 'nominal'>;

/** Are there coils enough for the traps asked for? */
export function canTrap(filter: readonly Piece[], asked: Asked): boolean {
  const coils = filter.filter(({ kind }) => kind === 'coil').length;
  return harmonicsOf(asked).length <= Math.max(1, coils);
}

/**
 * A filter whose middle coils have become traps: the second harmonic in the one nearest the middle,
 * the third in the next; of two that are alike the one towards the antenna comes first.
 */
export function withTraps(filter: readonly Piece[], asked: Asked): Piece[] {
  const harmonics = harmonicsOf(asked);
  const places = filter.flatMap(({ kind }, k) => (kind === 'coil' ? [k] : []));
  const middle = (places.length - 1) / 2;
  const byMiddle = places
    .map((place, k) => ({ place, off: Math.abs(k - middle) }))
    .sort((a, b) => a.off - b.off || b.place - a.place);
  return filter.flatMap((piece, place): Piece[] => {
    const order = harmonics[byMiddle.findIndex((one) => one.place === place)];
    if (order === undefined) return [piece];
    const notch = order * asked.nominal;
    const { l, c } = trapBranch(piece.value, asked.nominal, notch);
    return [
      { ...piece, value: l, notch, order },
      { kind: 'across', value: c, shares: [{ of: 'acrossTrap' }], notch, order },
    ];
  });
}

/** Harmonics that a filter of plain coils is to have traps for. */
function harmonicsOf({ traps, lowpass }: Asked): readonly number[] {
  if (lowpass === 'none' || lowpass === 'elliptic') return [];
  return { none: [], second: [2], third: [3], both: [2, 3] }[traps];
}
