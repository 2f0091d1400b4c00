import { memo, useDeferredValue, useMemo, useState } from 'react';
import { Section } from '../../design/Section.tsx';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Workings } from '../bound/Workings.tsx';
import type { BagRow, Use } from './bagRow.ts';
import { LineEditor } from './LineEditor.tsx';
import { type Column, type Order, sorted } from './sorted.ts';
import { useUses } from './useUses.ts';

const figures = ['fs', 'off', 'lm', 'rm', 'c0'] as const;

/** The bag as a table: sorted by any column, each line written anew in its place. */
export function BagTable() {
  const rows = useValue<readonly BagRow[]>('bag.rows');
  const late = useDeferredValue(rows);
  const uses = useUses();
  const [order, setOrder] = useState<Order>({ by: 'fs', falling: false });
  const [edited, setEdited] = useState<number | null>(null);
  const open = useBench((s) => (s.open?.path.startsWith('bag.rows.') ? s.open : null));
  const shownRows = useMemo(() => sorted(late ?? [], order, uses), [late, order, uses]);
  const columns = useMemo(() => columnsOf(late ?? []), [late]);
  const places = useMemo(() => new Map((late ?? []).map((row, i) => [row, i])), [late]);
  if (rows === null || late === null) return null;
  const press = (by: Column) =>
    setOrder((now) => ({ by, falling: now.by === by ? !now.falling : false }));
  return (
    <Section>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard */}
      <section className="table-scroll bag-table" aria-label="The bag" tabIndex={0}>
        <table className="table table--scroll">
          <caption>The bag, by {names[order.by]}</caption>
          <thead>
            <tr>
              {columns.map((by) => (
                <th
                  key={by}
                  scope="col"
                  data-as={isFigure(by) ? 'figure' : 'words'}
                  aria-sort={order.by !== by ? 'none' : order.falling ? 'descending' : 'ascending'}
                >
                  <button type="button" className="bag-table__by" onClick={() => press(by)}>
                    {names[by]}
                    <span aria-hidden="true">
                      {order.by === by ? (order.falling ? ' ↓' : ' ↑') : ''}
                    </span>
                  </button>
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {shownRows.map((row) => (
              <Line
                key={row.line}
                row={row}
                index={places.get(row) ?? 0}
                columns={columns}
                use={uses.get(row.label.toLowerCase())}
                edited={edited === row.line}
                onEdit={setEdited}
                open={open?.index === places.get(row) ? (open?.path ?? null) : null}
              />
            ))}
          </tbody>
        </table>
      </section>
      {open && <Workings of={open.path} index={open.index} />}
    </Section>
  );
}

/** Only columns that have something in them. */
function columnsOf(rows: readonly BagRow[]): readonly Column[] {
  const given = figures.filter((key) => rows.some((row) => row[key] !== null));
  const noted = rows.some(({ note }) => note !== '');
  return ['label', ...given, 'use', ...(noted ? (['note'] as const) : [])];
}

const names: Readonly<Record<Column, string>> = {
  label: 'Label',
  fs: 'fs',
  off: 'From the median',
  lm: 'Lm',
  rm: 'Rm',
  c0: 'C0',
  use: 'Used as',
  note: 'Note',
};

interface LineProps {
  row: BagRow;
  /** Its place among the rows of the stage, by which its workings are found. */
  index: number;
  columns: readonly Column[];
  use: Use | undefined;
  edited: boolean;
  onEdit: (line: number | null) => void;
  /** Path of the figure whose workings are open. */
  open: string | null;
}

const Line = memo(function Line({ row, index, columns, use, edited, onEdit, open }: LineProps) {
  return (
    <>
      <tr data-aside={row.standing === 'aside' || undefined}>
        {columns.map((column, place) =>
          place === 0 ? (
            <th key={column} scope="row" data-as="words">
              <button
                type="button"
                className="cell-how"
                aria-expanded={edited}
                title="Write this line anew"
                onClick={() => onEdit(edited ? null : row.line)}
              >
                {row.label || `line ${row.line}`}
              </button>
            </th>
          ) : (
            <td key={column} data-as={isFigure(column) ? 'figure' : 'words'}>
              {isFigure(column) ? (
                <Cell row={row} index={index} of={column} open={open} />
              ) : column === 'use' ? (
                usedAs(use, row)
              ) : (
                row.note
              )}
            </td>
          ),
        )}
      </tr>
      {edited && (
        <tr>
          <td colSpan={columns.length} data-as="words">
            <LineEditor line={row.line} onDone={() => onEdit(null)} />
          </td>
        </tr>
      )}
    </>
  );
});

type FigureColumn = (typeof figures)[number];

const isFigure = (column: Column): column is FigureColumn =>
  (figures as readonly string[]).includes(column);

function Cell({
  row,
  index,
  of,
  open,
}: {
  row: BagRow;
  index: number;
  of: FigureColumn;
  open: string | null;
}) {
  const value = row[of];
  const field = fieldAt('bag.rows');
  const column = field?.kind === 'table' ? field.columns[of] : undefined;
  if (value === null || !column) return '–';
  const path = `bag.rows.${of}`;
  return (
    <button
      type="button"
      className="cell-how"
      aria-expanded={open === path}
      title="Show the workings"
      onClick={() => useBench.getState().openWorking(open === path ? null : path, index)}
    >
      {shown(column, value)}
    </button>
  );
}

function usedAs(use: Use | undefined, row: BagRow): string {
  if (use?.kind === 'filter') return `filter, ${use.position}`;
  if (use) return 'carrier';
  return row.standing === 'aside' ? 'set aside' : '';
}
