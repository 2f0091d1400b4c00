import type { ReactNode } from 'react';
import { joined } from './joined.ts';
import { Words } from './Words.tsx';

export interface TableColumn {
  key: string;
  label: string;
  unit?: string | undefined;
  /** Figures stand to the right, under each other; words to the left. */
  as?: 'figure' | 'words';
}

export interface TableRow {
  key: string;
  cells: Readonly<Record<string, ReactNode>>;
  moved?: boolean;
}

interface TableProps {
  caption: string;
  /** The first column names the row. */
  columns: readonly TableColumn[];
  rows: readonly TableRow[];
  /** On a narrow page: each row a small block, or the whole table moves sideways. */
  narrow?: 'stack' | 'scroll';
}

/** Rows of figures under each other. */
export function Table({ caption, columns, rows, narrow = 'scroll' }: TableProps) {
  const table = (
    <table className={joined('table', `table--${narrow}`)}>
      <caption>{caption}</caption>
      <thead>
        <tr>
          {columns.map((column) => (
            <th key={column.key} scope="col" data-as={column.as ?? 'figure'}>
              {column.label}
              {column.unit !== undefined && <span className="table__unit"> {column.unit}</span>}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={row.key} data-moved={row.moved}>
            {columns.map((column, index) => {
              const cell = {
                'data-as': column.as ?? 'figure',
                'data-label': index === 0 ? undefined : column.label,
                'data-unit': column.unit,
              };
              return index === 0 ? (
                <th key={column.key} scope="row" {...cell}>
                  {whole(row.cells[column.key])}
                </th>
              ) : (
                <td key={column.key} {...cell}>
                  {whole(row.cells[column.key] ?? '–')}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
  if (narrow === 'stack') return table;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard
    <section className="table-scroll" aria-label={caption} tabIndex={0}>
      {table}
    </section>
  );
}

const whole = (cell: ReactNode) => (typeof cell === 'string' ? <Words of={cell} /> : cell);
