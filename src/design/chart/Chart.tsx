import { type ReactNode, useId } from 'react';
import { Disclosure } from '../Disclosure.tsx';
import { Table, type TableColumn, type TableRow } from '../Table.tsx';
import { words } from '../words.ts';
import { TakeChart } from './TakeChart.tsx';
import { type Measured, useMeasured } from './useMeasured.ts';

export interface ChartText {
  title: string;
  /** What the picture shows, in one or two sentences with the figures that matter. */
  summary: string;
  /** The picture's figures as a table, for those who cannot or would rather not see it. */
  table?: { columns: readonly TableColumn[]; rows: readonly TableRow[] } | undefined;
}

interface ChartProps extends ChartText {
  children: (place: Measured) => ReactNode;
}

/** What every chart has around it: a title, the gist in words, and the figures on request. */
export function Chart({ title, summary, table, children }: ChartProps) {
  const [ref, measured] = useMeasured();
  const id = useId();
  return (
    <figure className="chart" aria-labelledby={id}>
      <figcaption className="chart__caption">
        <h3 className="chart__title" id={id}>
          {title}
        </h3>
        <p className="chart__summary">{summary}</p>
      </figcaption>
      <div className="chart__place" ref={ref}>
        {children(measured)}
      </div>
      <div className="chart__tools">
        {table && (
          <Disclosure summary={words.data}>
            <Table caption={title} columns={table.columns} rows={table.rows} />
          </Disclosure>
        )}
        <TakeChart place={ref} title={title} summary={summary} />
      </div>
    </figure>
  );
}
