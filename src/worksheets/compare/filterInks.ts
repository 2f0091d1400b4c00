import type { Curve } from '../../design/chart/Plot.tsx';
import type { CompareAnswer, Compared } from '../../engine/errands/compare/compareAnswer.ts';

/** How each filter is drawn: darker and whole, or lighter and dashed, never by hue alone. */
export const filterInks: Readonly<Record<Compared['variant']['name'], Curve['ink']>> = {
  A: 'main',
  B: 'other',
  C: 'third',
  D: 'fourth',
};

/** A filter that came out. */
export interface FoundFilter {
  readonly name: Compared['variant']['name'];
  readonly found: NonNullable<Compared['found']>;
}

/** Those that came out, in order. */
export const foundIn = ({ filters }: CompareAnswer): readonly FoundFilter[] =>
  filters.flatMap(({ variant, found }) => (found ? [{ name: variant.name, found }] : []));
