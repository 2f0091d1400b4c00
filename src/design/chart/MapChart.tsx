import { memo } from 'react';
import { Chart, type ChartText } from './Chart.tsx';
import { MapCells } from './MapCells.tsx';
import { Plot } from './Plot.tsx';
import type { Measured } from './useMeasured.ts';

/** How a cell is drawn: in four shades from faint to full, dotted, hatched, or left blank. */
export type MapLook = 'shade1' | 'shade2' | 'shade3' | 'shade4' | 'dotted' | 'hatched' | 'blank';

export interface MapCell {
  look: MapLook;
  /** A figure in the cell, where there is room for it. */
  mark?: string | undefined;
}

export interface MapPlace {
  column: number;
  row: number;
}

export interface MapChartProps extends ChartText {
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
  /** A cell that is marked: the one now worked with. */
  marked: MapPlace;
  /** The cell that is looked at. */
  at: MapPlace;
  onPick: (place: MapPlace) => void;
  /** What each look stands for. */
  legend: readonly (readonly [look: MapLook, says: string])[];
  /** What the two marks are called. */
  names: { marked: string; at: string };
}

function Picture({ width, em, of }: Measured & { of: MapChartProps }) {
  const { x, y, legend, names } = of;
  return (
    <div className="map">
      <Plot
        width={width}
        em={em}
        tall={Math.min(30, Math.max(24, width / em / 2))}
        left={3.5}
        right={0.5}
        x={{ from: x.edges[0] ?? 0, to: x.edges.at(-1) ?? 1, ticks: x.ticks, name: x.name }}
        y={{
          from: y.edges[0] ?? 0,
          to: y.edges.at(-1) ?? 1,
          ticks: y.ticks,
          name: y.name,
          format: y.format,
        }}
      >
        <MapCells of={of} em={em} />
      </Plot>
      <p className="map__legend">
        {legend.map(([look, says]) => (
          <span key={look}>
            <svg aria-hidden="true" viewBox="0 0 24 14">
              <rect className={`map__cell map__cell--${look}`} width="24" height="14" />
              <rect className="map__sample" width="24" height="14" />
            </svg>
            {says}
          </span>
        ))}
        <span>
          <svg aria-hidden="true" viewBox="0 0 24 14">
            <rect className="map__mark" x="1" y="1" width="22" height="12" />
          </svg>
          {names.marked}
        </span>
        <span>
          <svg aria-hidden="true" viewBox="0 0 24 14">
            <rect className="map__at" x="2" y="2" width="20" height="10" />
          </svg>
          {names.at}
        </span>
      </p>
    </div>
  );
}

/** A map of cells over two axes, any of which can be picked. */
export const MapChart = memo(function MapChart(props: MapChartProps) {
  return (
    <Chart title={props.title} summary={props.summary} table={props.table}>
      {(place) => <Picture of={props} {...place} />}
    </Chart>
  );
});
