import { Table, type TableColumn } from '../../design/Table.tsx';
import { Verdict } from '../../design/Verdict.tsx';
import type { Column } from '../../engine/fields/kinds.ts';
import { fieldAt } from '../../engine/rig/fieldAt.ts';
import { shown } from '../../engine/rig/moved.ts';
import { useMove, useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';
import { Workings } from './Workings.tsx';

interface RowsProps {
  /** Path of a table result: `filter.couplings`. */
  of: string;
  /** Which columns, in which order; all if not said. The first names the row. */
  columns?: readonly string[];
  narrow?: 'stack' | 'scroll';
  caption?: string;
}

type Row = Readonly<Record<string, unknown>>;

const outcomes: readonly unknown[] = ['holds', 'close', 'fails'];

/** A table result: each figure opens its own workings under the table. */
export function Rows({ of, columns, narrow = 'stack', caption }: RowsProps) {
  const field = fieldAt(of);
  const rows = useValue<readonly Row[]>(of);
  const moved = useMove(of) !== undefined;
  const names = columns ?? (field?.kind === 'table' ? Object.keys(field.columns) : []);
  const open = useBench((s) =>
    names.some((name) => s.open?.path === `${of}.${name}`) ? s.open : null,
  );
  const openWorking = useBench((s) => s.openWorking);
  if (field?.kind !== 'table') throw new Error(`no table ${of}`);
  if (rows === null || rows.length === 0) return null;
  const heads: TableColumn[] = names.map((name, place) => ({
    key: name,
    label: field.columns[name]?.label ?? name,
    as: place > 0 && isFigure(field.columns[name]) ? 'figure' : 'words',
  }));
  const cell = (row: Row, name: string, index: number) => {
    const column = field.columns[name];
    const value = row[name];
    if (!column || value === null || value === undefined) return '–';
    const text = shown(column, value);
    if (column.kind === 'choice' && outcomes.includes(value)) {
      return <Verdict of={value as 'holds' | 'close' | 'fails'} />;
    }
    if (!isFigure(column)) return text;
    const path = `${of}.${name}`;
    const isOpen = open?.path === path && open.index === index;
    return (
      <button
        type="button"
        className="cell-how"
        aria-expanded={isOpen}
        title="Show the workings"
        onClick={() => openWorking(isOpen ? null : path, index)}
      >
        {text}
      </button>
    );
  };
  return (
    <>
      <Table
        caption={caption ?? field.label}
        columns={heads}
        narrow={narrow}
        rows={rows.map((row, index) => ({
          key: `${index}`,
          moved,
          cells: Object.fromEntries(names.map((name) => [name, cell(row, name, index)])),
        }))}
      />
      {open && <Workings of={open.path} index={open.index} />}
    </>
  );
}

const isFigure = (column: Column | undefined) =>
  column?.kind === 'quantity' || column?.kind === 'count';
