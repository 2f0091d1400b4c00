import type { Ladder } from '../../circuit/ladder.ts';
import type { Problem } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import { attenuationPast, leakagePast } from './leakagePast.ts';
import type { FilterSeen } from './seen.ts';

/** What leaks past the filter. */
export interface Leaks {
  /** F; null where nothing does or it can't be told. */
  readonly c: number | null;
  readonly problems: readonly Problem[];
}

/**
 * The capacitance past the filter, from either of its two entries.
 *
 * @param exact the design, whose ends count where none are given
 * @param f Hz
 */
export function leaks(seen: FilterSeen, exact: Ladder, f: number): Leaks {
  const { leakage, leakageDb } = seen;
  const ends = endsOf(seen, exact);
  if (leakage !== null && leakageDb !== null) {
    const own = format(attenuationPast(...ends, leakage, f), 'dB', 3);
    return {
      c: null,
      problems: [
        {
          field: 'filter.leakage',
          weight: 'stops',
          says: `Leakage is given twice: ${format(leakage, 'F', 2)} is ${own} between these ends, and ${format(leakageDb, 'dB', 3)} stands beside it. None is counted.`,
          try: 'Leave one of them blank.',
        },
      ],
    };
  }
  if (leakageDb === null) return { c: leakage, problems: [] };
  const c = leakagePast(...ends, leakageDb, f);
  if (c !== null) return { c, problems: [] };
  return {
    c: null,
    problems: [
      {
        field: 'filter.leakageDb',
        weight: 'stops',
        says: `Between these ends no capacitance passes so much that only ${format(leakageDb, 'dB', 3)} are lost. None is counted.`,
        try: 'Measure it with the crystals taken out, between the ends that the filter works with.',
      },
    ],
  };
}

/** Impedances that the filter is fed from and works into. */
export const endsOf = (
  seen: FilterSeen,
  exact: Ladder,
): readonly [source: Ladder['source'], load: Ladder['load']] => [
  [seen.sourceResistance ?? exact.source[0], seen.sourceReactance],
  [seen.loadResistance ?? exact.load[0], seen.loadReactance],
];
