import type { Ladder } from '../../circuit/ladder.ts';
import type { RowOf } from '../../fields/kinds.ts';
import { type Fitted, partsInWords } from './chooseCapacitor.ts';
import type { filterFields } from './fields.ts';
import type { Choice, FittedParts } from './fitParts.ts';
import type { Owned } from './ownedParts.ts';

type Results = (typeof filterFields)['results'];
type CouplingRow = RowOf<Results['couplings']['columns']>;
type MeshRow = RowOf<Results['meshes']['columns']>;
type StockRow = RowOf<Results['stock']['columns']>;

/** The table of the coupling capacitors. */
export const couplingRows = (
  real: Ladder,
  parts: FittedParts | null,
  k: readonly number[],
): CouplingRow[] =>
  Array.from(real.coupling, (exact, i) => ({
    junction: i + 1,
    k: k[i] ?? null,
    ...cells(exact, parts?.coupling[i] ?? null),
  }));

/** The table of the aligning capacitors. */
export const meshRows = (
  real: Ladder,
  parts: FittedParts | null,
  sums: readonly number[],
): MeshRow[] =>
  Array.from(real.series, (exact, i) => ({
    mesh: i + 1,
    sum: sums[i] ?? null,
    ...(exact > 0
      ? cells(exact, parts?.series[i] ?? null)
      : { exact: null, nearest: null, fitted: null, parts: 'none', off: null }),
  }));

function cells(exact: number, choice: Choice | null) {
  const chosen: Fitted = choice?.chosen ?? { value: exact, parts: [] };
  return {
    exact,
    nearest: choice && choice.nearest.parts.length > 0 ? choice.nearest.value : null,
    fitted: chosen.value,
    parts: partsInWords(chosen),
    off: chosen.value / exact - 1,
  };
}

/** What the filter takes of the capacitors that are owned. */
export function stockRows(owned: readonly Owned[], parts: FittedParts | null): StockRow[] {
  const used = [...(parts?.coupling ?? []), ...(parts?.series ?? [])].flatMap(
    (one) => one?.chosen.parts ?? [],
  );
  return owned.map(({ value, count }) => {
    const taken = used.filter((part) => part === value).length;
    return { value, owned: count, used: taken, left: count - taken };
  });
}
