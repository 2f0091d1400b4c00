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

/** The point of a way that lies highest: where its name has room. */
function highest({ x, y }: XY): { x: number; y: number } {
  let best = 0;
  for (let i = 0; i < y.length; i += 1) if ((y[i] ?? 0) > (y[best] ?? 0)) best = i;
  return { x: x[best] ?? 0, y: y[best] ?? 0 };
}

function Picture({ width, em, ...props }: LoopChartProps & Measured) {
  const { loop, line, x, y, uprights = [], tall = 18 } = props;
  const middle = Math.floor(line.x.length / 2);
  return (
    <Plot
      width={width}
      em={em}
      tall={tall}
      x={{ ...x, ticks: ticks(x.from, x.to, 6), format: plain }}
      y={{ ...y, ticks: ticks(y.from, y.to, 5), format: plain }}
    >
      {uprights.map((one) => (
        <Upright key={one.label} {...one} kind="rule" em={em} />
      ))}
      <Way of={line} ink="reference" />
      <CurveName
        x={line.x[middle] ?? 0}
        y={line.y[middle] ?? 0}
        label={line.label}
        side="right"
        em={em}
      />
      {loop && <Way of={loop} ink="main" />}
      {loop && <CurveName {...highest(loop)} label={loop.label} side="right" em={em} />}
    </Plot>
  );
}

/** A way over two axes that runs back to where it began: current against voltage over a cycle. */
export const LoopChart = memo(function LoopChart(props: LoopChartProps) {
  return (
    <Chart title={props.title} summary={props.summary} table={props.table}>
      {(place) => <Picture {...props} {...place} />}
    </Chart>
  );
});
