import { between, type Ladder } from '../../circuit/ladder.ts';
import type { LadderForWidth } from '../../circuit/ladderForWidth.ts';
import type { RowOf } from '../../fields/kinds.ts';
import { chooseCapacitor, partsInWords } from './chooseCapacitor.ts';
import type { filterFields } from './fields.ts';
import type { FilterSeen } from './seen.ts';

type CouplingRow = RowOf<(typeof filterFields)['results']['couplings']['columns']>;
type MeshRow = RowOf<(typeof filterFields)['results']['meshes']['columns']>;

/** The ladder with the parts chosen and the ends that it really has, and the tables of its parts. */
export function fittedLadder(
  seen: FilterSeen,
  { ladder: exact }: LadderForWidth,
  sums: readonly number[],
  k: readonly number[],
): { ladder: Ladder; couplings: CouplingRow[]; meshes: MeshRow[] } {
  const couplings = [...exact.coupling].map((c, i) => {
    const chosen = chooseCapacitor(c, seen.fitted);
    return {
      junction: i + 1,
      k: k[i] ?? null,
      exact: c,
      fitted: chosen.value,
      parts: partsInWords(chosen),
      off: chosen.value / c - 1,
    };
  });
  const meshes = [...exact.series].map((c, i) => {
    const mesh = { mesh: i + 1, sum: sums[i] ?? null };
    if (c === 0) return { ...mesh, exact: null, fitted: null, parts: 'none', off: null };
    const chosen = chooseCapacitor(c, seen.fitted);
    const off = chosen.value / c - 1;
    return { ...mesh, exact: c, fitted: chosen.value, parts: partsInWords(chosen), off };
  });
  const { sourceResistance, loadResistance, fitted } = seen;
  if (fitted === 'exact' && sourceResistance === null && loadResistance === null) {
    return { ladder: exact, couplings, meshes };
  }
  const ladder = between(
    {
      ...exact,
      coupling: Float64Array.from(couplings, (row) => row.fitted),
      series: Float64Array.from(meshes, (row) => row.fitted ?? 0),
    },
    [sourceResistance ?? exact.source[0], 0],
    [loadResistance ?? exact.load[0], 0],
  );
  return { ladder, couplings, meshes };
}
