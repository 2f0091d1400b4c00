import { memo } from 'react';
import { Chart, type ChartText } from './Chart.tsx';
import { Plot } from './Plot.tsx';
import { ticks } from './ticks.ts';
import type { Measured } from './useMeasured.ts';
import { useScales } from './useScales.ts';

/** One piece of a lot. */
export interface Dot {
  key: string;
  x: number;
  /** `plain` a ring; `placed` filled, with a number in it; `marked` a lozenge with a letter in it. */
  kind: 'plain' | 'placed' | 'marked';
  /** Number or letter in it. */
  text?: string;
}

export interface DotStripChartProps extends ChartText {
  /** In rising order of x. */
  dots: readonly Dot[];
  from: number;
  to: number;
  /** Quantity and unit along the axis. */
  xName: string;
}

/** Room of a dot, in em. */
const ROOM = 1.05;

interface Stacked extends Dot {
  /** Place in its column, from the axis upwards. */
  level: number;
  /** Middle of its column, in the unit of the axis. */
  column: number;
}

/** Dots that would cover one another stand on each other's shoulders: what is there is seen. */
function stacked(dots: readonly Dot[], from: number, to: number, columns: number): Stacked[] {
  const width = (to - from) / columns;
  const heights = new Map<number, number>();
  return dots.map((dot) => {
    const column = Math.floor((dot.x - from) / width);
    const level = heights.get(column) ?? 0;
    heights.set(column, level + 1);
    return { ...dot, level, column: from + (column + 0.5) * width };
  });
}

function Dots({ dots, em }: { dots: readonly Stacked[]; em: number }) {
  const s = useScales();
  if (s === null) return null;
  return (
    <g>
      {dots.map(({ key, x, column, level, kind, text }) => {
        const [cx, cy] = [s.x(column), s.bottom - (level + 0.62) * ROOM * em];
        const r = (kind === 'plain' ? 0.3 : 0.48) * em;
        return (
          <g key={key} className={`chart__dot chart__dot--${kind}`}>
            <path className="chart__dot-foot" d={`M${s.x(x)} ${s.bottom}v${0.25 * em}`} />
            {kind === 'marked' ? (
              <path
                d={`M${cx} ${cy - 1.15 * r}l${1.15 * r} ${1.15 * r}l${-1.15 * r} ${1.15 * r}l${-1.15 * r} ${-1.15 * r}z`}
              />
            ) : (
              <circle cx={cx} cy={cy} r={r} />
            )}
            {text !== undefined && (
              <text x={cx} y={cy + 0.27 * em} textAnchor="middle">
                {text}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

function Picture({ dots, from, to, xName, width, em }: DotStripChartProps & Measured) {
  const columns = Math.max(8, Math.floor((width / em - 2) / ROOM));
  const piled = stacked(dots, from, to, columns);
  const highest = Math.max(2, ...piled.map(({ level }) => level + 1));
  return (
    <Plot
      width={width}
      em={em}
      tall={highest * ROOM + 5.4}
      left={0.6}
      x={{ from, to, ticks: ticks(from, to, width / em / 5), name: xName }}
      y={{ from: 0, to: 1, ticks: [] }}
    >
      <Dots dots={piled} em={em} />
    </Plot>
  );
}

/** A lot as it is: each piece at its place along the axis, none summed up. */
export const DotStripChart = memo(function DotStripChart(props: DotStripChartProps) {
  return (
    <Chart title={props.title} summary={props.summary} table={props.table}>
      {(place) => <Picture {...props} {...place} />}
    </Chart>
  );
});
