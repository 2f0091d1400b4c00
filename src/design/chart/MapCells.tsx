import { memo } from 'react';
import type { MapCell, MapChartProps, MapPlace } from './MapChart.tsx';
import { type Scales, useScales } from './useScales.ts';

/** Size of a figure in a cell, em, and the room that the widest of them wants. */
const FIGURE = 0.625;
const ROOM = { wide: 1.9 * FIGURE, high: 1.15 * FIGURE };
/** Width of a digit, in its own size. */
const DIGIT = 0.55;

type Box = { x: number; y: number; width: number; height: number };

/** The cells, what stands in them, and the two marks. */
export function MapCells({ of, em }: { of: MapChartProps; em: number }) {
  const s = useScales();
  if (s === null) return null;
  const { x, y, cells, marked, at, onPick } = of;
  const box = boxes(s, x.edges, y.edges);
  return (
    <g>
      <defs>
        <pattern id="dots" width="6" height="6" patternUnits="userSpaceOnUse">
          <circle className="map__dot" cx="3" cy="3" r="1.1" />
        </pattern>
      </defs>
      <Grid cells={cells} rows={y.edges.length - 1} box={box} onPick={onPick} em={em} />
      <rect className="map__mark" {...box(marked)} />
      <rect className="map__at" {...box(at)} />
    </g>
  );
}

const boxes =
  (s: Scales, columns: readonly number[], rows: readonly number[]) =>
  ({ column, row }: MapPlace): Box => {
    const [left, right] = [s.x(columns[column] ?? 0), s.x(columns[column + 1] ?? 0)];
    const [bottom, top] = [s.y(rows[row] ?? 0), s.y(rows[row + 1] ?? 0)];
    return { x: left, y: top, width: right - left, height: bottom - top };
  };

interface GridProps {
  cells: readonly MapCell[];
  rows: number;
  box: (place: MapPlace) => Box;
  onPick: (place: MapPlace) => void;
  em: number;
}

/** Not drawn anew while only the picked cell moves. */
const Grid = memo(
  function Grid({ cells, rows, box, onPick, em }: GridProps) {
    const first = box({ column: 0, row: 0 });
    // Figures stand in every cell where they fit, else in every second or third.
    const every = {
      column: Math.max(1, Math.ceil((ROOM.wide * em) / first.width)),
      row: Math.max(1, Math.ceil((ROOM.high * em) / first.height)),
    };
    const places = cells.map((cell, i) => {
      const place = { column: Math.floor(i / rows), row: i % rows };
      return { ...cell, place, i, at: box(place) };
    });
    const isWritten = ({ look, mark, place, i, at }: (typeof places)[number]) => {
      if (mark === undefined || place.column % every.column || place.row % every.row) return false;
      // One that is wider than its cell must not run into cells of another look.
      if (mark.length * DIGIT * FIGURE * em <= at.width) return true;
      return cells[i - rows]?.look === look && cells[i + rows]?.look === look;
    };
    return (
      <>
        {places.map(({ look, place, at }) => (
          // biome-ignore lint/a11y/noStaticElementInteractions: the buttons below the picture do the same
          <rect
            key={`${place.column}.${place.row}`}
            className={`map__cell map__cell--${look}`}
            onClick={() => onPick(place)}
            {...at}
          />
        ))}
        {places.filter(isWritten).map(({ look, mark, place, at }) => (
          <text
            key={`${place.column}.${place.row}`}
            className={`map__figure map__figure--${look}`}
            x={at.x + at.width / 2}
            y={at.y + at.height / 2}
            fontSize={FIGURE * em}
          >
            {mark}
          </text>
        ))}
      </>
    );
  },
  (a, b) => {
    const [one, other] = [a.box({ column: 1, row: 1 }), b.box({ column: 1, row: 1 })];
    return (
      a.cells === b.cells &&
      a.onPick === b.onPick &&
      a.em === b.em &&
      one.x === other.x &&
      one.y === other.y &&
      one.width === other.width &&
      one.height === other.height
    );
  },
);
