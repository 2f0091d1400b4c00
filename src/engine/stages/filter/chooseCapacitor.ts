import { format } from '../../quantity/format.ts';
import { bestPair, nearest, type Series } from '../../quantity/preferred.ts';

/** How capacitors are chosen. */
export type Fitting = 'exact' | 'e24' | 'e12' | 'e6' | 'e24Pairs' | 'e12Pairs' | 'e6Pairs' | 'own';

/** Fittings that draw on a series of preferred values. */
export type SeriesFitting = Exclude<Fitting, 'exact' | 'own'>;

/** What is soldered in for one capacitor. */
export interface Fitted {
  /** F */
  readonly value: number;
  /** One or two capacitors that add to it, F; none for an exact value. */
  readonly parts: readonly number[];
}

type Drawn = Extract<Series, 'E6' | 'E12' | 'E24'>;

const ways: Readonly<Record<SeriesFitting, readonly [Drawn, 'single' | 'pair']>> = {
  e24: ['E24', 'single'],
  e12: ['E12', 'single'],
  e6: ['E6', 'single'],
  e24Pairs: ['E24', 'pair'],
  e12Pairs: ['E12', 'pair'],
  e6Pairs: ['E6', 'pair'],
};

/** The series that a fitting draws on, and whether two may stand side by side. */
export const seriesOf = (fitting: SeriesFitting) => ways[fitting];

/** Smallest ceramic capacitor that is commonly to be had, F. */
export const SMALLEST = 1e-12;

/**
 * The part or parts nearest to a capacitance, each capacitor for itself.
 *
 * @param exact F, above zero
 */
export function chooseCapacitor(exact: number, fitting: SeriesFitting): Fitted {
  const [series, way] = ways[fitting];
  if (way === 'single') {
    const value = nearest(exact, series);
    return { value, parts: [value] };
  }
  const { parts, sum } = bestPair(exact, series, SMALLEST);
  return { value: sum, parts };
}

/** The parts in words: "68 pF + 3.3 pF". */
export const partsInWords = ({ value, parts }: Fitted): string =>
  parts.length === 0
    ? format(value, 'F', 4)
    : parts.map((part) => format(part, 'F', 2)).join(' + ');
