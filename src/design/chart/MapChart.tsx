import { type KeyboardEvent, memo, useState } from 'react';
import { Chart, type ChartText } from './Chart.tsx';
import { Plot } from './Plot.tsx';
import type { Measured } from './useMeasured.ts';
import { useScales } from './useScales.ts';

export interface MapCell {
  /** 0 to 1: how dark. */
  shade: number;
  /** Whole, or hatched where it is there but of no use; nothing at all is left blank. */
  kind: 'whole' | 'hatched' | 'blank';
}

interface MapChartProps extends ChartText {
  /** Edges of the columns and rows in the axes' own units: one more than there are of them. */
  x: { edges: readonly number[]; ticks: readonly number[]; name: string };
  y: {
    edges: readonly number[];
    ticks: readonly number[];
    name: string;
    format: (value: number) => string;
  };
  /** Column by column, from the first row up. */
  cells: readonly MapCell[];
  /** What one cell says, in a line. */
  read: (column: number, row: number) => string;
  /** A cell that is marked: the one now worked with. */
  marked: { column: number; row: number };
  /** What choosing a cell does, and what the button is called. */
  onChoose: (column: number, row: number) => void;
  choose: string;
  /** What whole and hatched stand for. */
  legend: { whole: string; hatched: string; blank: string };
  /** What the lightest and the darkest shade stand for. */
  shades: { light: string; dark: string };
}

interface Place {
  column: number;
  row: number;
}

function Cells({
  of,
  onPick,
  at,
}: {
  of: MapChartProps;
  onPick: (place: Place) => void;
  at: Place;
}) {
  const s = useScales();
  if (s === null) return null;
  const { x, y, cells, marked } = of;
  const rows = y.edges.length - 1;
  const box = ({ column, row }: Place) => {
    const [left, right] = [s.x(x.edges[column] ?? 0), s.x(x.edges[column + 1] ?? 0)];
    const [bottom, top] = [s.y(y.edges[row] ?? 0), s.y(y.edges[row + 1] ?? 0)];
    return { x: left, y: top, width: right - left, height: bottom - top };
  };
  return (
    <g>
      {cells.map((cell, i) => {
        const place = { column: Math.floor(i / rows), row: i % rows };
        const { x: left, y: top, width, height } = box(place);
        return (
          // biome-ignore lint/a11y/noStaticElementInteractions: the keys below the picture do the same
          <rect
            key={`${place.column}.${place.row}`}
            className={`map__cell map__cell--${cell.kind}`}
            style={cell.kind === 'whole' ? { fillOpacity: 0.15 + 0.8 * cell.shade } : undefined}
            x={left}
            y={top}
            width={width}
            height={height}
            onClick={() => onPick(place)}
          />
        );
      })}
      <rect className="map__mark" {...box(marked)} />
      <rect className="map__at" {...box(at)} />
    </g>
  );
}

function Picture({ width, em, of }: Measured & { of: MapChartProps }) {
  const { x, y, marked, read, onChoose, choose, legend, shades } = of;
  const [picked, setPicked] = useState<Place | null>(null);
  const at = picked ?? marked;
  const columns = x.edges.length - 1;
  const rows = y.edges.length - 1;
  const move = (event: KeyboardEvent) => {
    const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[
      event.key
    ];
    if (step === undefined) return;
    event.preventDefault();
    setPicked({
      column: (at.column + (step[0] ?? 0) + columns) % columns,
      row: Math.min(rows - 1, Math.max(0, at.row + (step[1] ?? 0))),
    });
  };
  return (
    <div className="map">
      <Plot
        width={width}
        em={em}
        tall={Math.min(26, Math.max(18, width / em / 2))}
        left={4}
        x={{ from: x.edges[0] ?? 0, to: x.edges.at(-1) ?? 1, ticks: x.ticks, name: x.name }}
        y={{
          from: y.edges[0] ?? 0,
          to: y.edges.at(-1) ?? 1,
          ticks: y.ticks,
          name: y.name,
          format: y.format,
        }}
      >
        <Cells of={of} onPick={setPicked} at={at} />
      </Plot>
      <p className="map__legend">
        <span data-piece="whole">{legend.whole}</span>
        <span data-piece="hatched">{legend.hatched}</span>
        <span data-piece="blank">{legend.blank}</span>
        <span data-piece="shades">
          {shades.light} <i aria-hidden="true" /> {shades.dark}
        </span>
      </p>
      <div className="map__read">
        <output>{read(at.column, at.row)}</output>
        <button
          type="button"
          className="button"
          onKeyDown={move}
          onClick={() => onChoose(at.column, at.row)}
        >
          {choose}
        </button>
      </div>
    </div>
  );
}

/** A map of cells over two axes, any of which can be read and chosen, by pointer or arrow keys. */
export const MapChart = memo(function MapChart(props: MapChartProps) {
  return (
    <Chart title={props.title} summary={props.summary} table={props.table}>
      {(place) => <Picture of={props} {...place} />}
    </Chart>
  );
});
