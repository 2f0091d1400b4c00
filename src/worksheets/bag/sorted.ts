import type { BagRow, Use } from './bagRow.ts';

/** Columns that the table can be sorted by. */
export type Column = 'label' | 'fs' | 'off' | 'lm' | 'rm' | 'c0' | 'use' | 'note';

export interface Order {
  readonly by: Column;
  readonly falling: boolean;
}

/** The rows in an order; what has no value in the column stands last, whatever the direction. */
export function sorted(
  rows: readonly BagRow[],
  { by, falling }: Order,
  uses: ReadonlyMap<string, Use>,
): BagRow[] {
  const way = falling ? -1 : 1;
  const valueIn = (row: BagRow): number | string | null => {
    if (by === 'label') return row.label === '' ? null : row.label;
    if (by === 'note') return row.note === '' ? null : row.note;
    if (by !== 'use') return row[by];
    const use = uses.get(row.label.toLowerCase());
    return use === undefined ? null : use.kind === 'filter' ? use.position : 1000;
  };
  return rows
    .map((row) => ({ row, value: valueIn(row) }))
    .sort((a, b) => {
      if (a.value === null || b.value === null) {
        return Number(a.value === null) - Number(b.value === null) || a.row.line - b.row.line;
      }
      const less =
        typeof a.value === 'number' && typeof b.value === 'number'
          ? a.value - b.value
          : byName.compare(String(a.value), String(b.value));
      return way * less || a.row.line - b.row.line;
    })
    .map(({ row }) => row);
}

/** 2 before 10. */
const byName = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });
