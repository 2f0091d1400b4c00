import type { FigureName } from './buildFigures.ts';
import { figures } from './buildFigures.ts';

/** What a build must keep to; null where nothing is asked. Hz and dB. */
export interface Mask {
  readonly widthLeast: number | null;
  readonly widthMost: number | null;
  readonly ripple: number | null;
  readonly loss: number | null;
  readonly carrier: number | null;
  readonly opposite: number | null;
}

export type CriterionName = keyof Mask;

/** Which figure each limit is for, and whether it is the least or the most that it may be. */
export const criteria: readonly {
  readonly name: CriterionName;
  readonly figure: FigureName;
  readonly side: 'least' | 'most';
}[] = [
  { name: 'widthLeast', figure: 'width', side: 'least' },
  { name: 'widthMost', figure: 'width', side: 'most' },
  { name: 'ripple', figure: 'ripple', side: 'most' },
  { name: 'loss', figure: 'loss', side: 'most' },
  { name: 'carrier', figure: 'carrier', side: 'least' },
  { name: 'opposite', figure: 'opposite', side: 'least' },
];

/** Whether anything is asked at all. */
export const asksAnything = (mask: Mask): boolean =>
  criteria.some(({ name }) => mask[name] !== null);

const places = criteria.map(({ figure }) => figures.indexOf(figure));

/**
 * Which limits a build breaks, a bit for each criterion in their order. A figure that does not
 * exist breaks nothing: where there is no carrier nobody asks how far it is down.
 *
 * @param found figures of builds, in their order
 * @param at where those of this build begin
 */
export function broken(mask: Mask, found: ArrayLike<number>, at = 0): number {
  let bits = 0;
  for (let i = 0; i < criteria.length; i += 1) {
    const { name, side } = criteria[i] as (typeof criteria)[number];
    const limit = mask[name];
    if (limit === null) continue;
    const figure = found[at + (places[i] as number)] as number;
    if (side === 'least' ? figure < limit : figure > limit) bits |= 1 << i;
  }
  return bits;
}
