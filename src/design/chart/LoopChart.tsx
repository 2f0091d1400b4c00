import { memo } from 'react';
import { Chart, type ChartText } from './Chart.tsx';
import { CurveName } from './CurveName.tsx';
import { Plot } from './Plot.tsx';
import type { XY } from './thinned.ts';
import { plain, ticks } from './ticks.ts';
import { Upright } from './Upright.tsx';
import type { Measured } from './useMeasured.ts';
import { useScales } from './useScales.ts';

interface Axis {
  from: number;
  to: number;
  name: string;
  /** Beyond this nothing may go: the ground there is hatched. */
  limit?: { at: number; label: string } | undefined;
}

interface LoopChartProps extends ChartText {
  /** A way that may turn back on itself, drawn heavy; null while there is none. */
  loop: (XY & { label: string }) | null;
  /** What it is held against, dashed. */
  line: XY & { label: string };
  x: Axis;
  y: Axis;
  uprights?: readonly { at: number; label: string }[];
  tall?: number;
}

function Way({ of, ink }: { of: XY; ink: 'main' | 'reference' }) {
  const s = useScales();
  if (s === null) return null;
  const points = Array.from(of.x, (x, i) => `${s.x(x).toFixed(1)} ${s.y(of.y[i] ?? 0).toFixed(1)}`);
  return <path className={`chart__curve chart__curve--${ink}`} d={`M${points.join('L')}`} />;
}

/** Hatched ground beyond the limits, their edges and names. */
function Limits({ x, y, em }: { x: Axis['limit']; y: Axis['limit']; em: number }) {
  const s = useScales();
  if (s === null) return null;
  const right = x ? s.x(x.at) : s.right;
  const top = y ? s.y(y.at) : s.top;
  return (
    <g>
      <path
        className="chart__unwanted"
        d={`M${s.left} ${s.top}H${s.right}V${s.bottom}H${right}V${top}H${s.left}Z`}
      />
      <path
        className="chart__limit"
        d={`${y ? `M${s.left} ${top}H${right}` : ''}${x ? `M${right} ${top}V${s.bottom}` : ''}`}
      />
      {y && (
        <text className="chart__halo" x={s.left + em * 0.5} y={top + em * 1.25}>
          {y.label}
        </text>
      )}
      {x && (
        <text
          className="chart__halo"
          x={right - em * 0.5}
          y={(top + s.bottom) / 2}
          textAnchor="end"
        >
          {x.label}
        </text>
      )}
    </g>
  );
}

/** A name that begins over a point: a way that falls off to the right doesn't cross it. */
function NameAbove({ x, y, label, em }: { x: number; y: number; label: string; em: number }) {
  const s = useScales();
  if (s === null) return null;
  return (
    <text className="chart__halo" x={s.x(x)} y={s.y(y) - em * 0.6}>
      {label}
    </text>
  );
}

/** The point of a way that lies highest: over it its name has room. */
function highest({ x, y }: XY): { x: number; y: number } {
  let best = 0;
  for (let i = 0; i < y.length; i += 1) if ((y[i] ?? 0) > (y[best] ?? 0)) best = i;
  return { x: x[best] ?? 0, y: y[best] ?? 0 };
}

function Picture({ width, em, ...props }: LoopChartProps & Measured) {
  const { loop, line, x, y, uprights = [], tall = 20 } = props;
  const [top, under] =
    loop && highest(loop).y > highest(line).y ? [loop, line] : [line, loop ?? null];
  return (
    <Plot
      width={width}
      em={em}
      tall={tall}
      x={{ ...x, ticks: ticks(x.from, x.to, 6), format: plain }}
      y={{ ...y, ticks: ticks(y.from, y.to, 5), format: plain }}
    >
      {(x.limit || y.limit) && <Limits x={x.limit} y={y.limit} em={em} />}
      {uprights.map((one) => (
        <Upright key={one.label} {...one} kind="rule" em={em} />
      ))}
      <Way of={line} ink="reference" />
      {loop && <Way of={loop} ink="main" />}
      <NameAbove {...highest(top)} label={top.label} em={em} />
      {under && <CurveName {...beneath(under)} label={under.label} side="left" em={em} />}
    </Plot>
  );
}

/** The point half as high as the highest that lies furthest to the left: the lower way's name. */
function beneath(way: XY): { x: number; y: number } {
  const half = highest(way).y / 2;
  let found = highest(way);
  let near = Number.POSITIVE_INFINITY;
  for (let i = 0; i < way.y.length; i += 1) {
    const [x, y] = [way.x[i] ?? 0, way.y[i] ?? 0];
    const off = Math.abs(y - half) / half + 0.02 * x;
    if (off < near) [near, found] = [off, { x, y }];
  }
  return found;
}

/** A way over two axes that runs back to where it began: current against voltage over a cycle. */
export const LoopChart = memo(function LoopChart(props: LoopChartProps) {
  return (
    <Chart title={props.title} summary={props.summary} table={props.table}>
      {(place) => <Picture {...props} {...place} />}
    </Chart>
  );
});
