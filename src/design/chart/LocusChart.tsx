import { memo } from 'react';
import { Chart, type ChartText } from './Chart.tsx';
import { CurveName } from './CurveName.tsx';
import { Plot } from './Plot.tsx';
import type { XY } from './thinned.ts';
import { plain, ticks } from './ticks.ts';
import type { Measured } from './useMeasured.ts';
import { useScales } from './useScales.ts';

export interface LocusChartProps extends ChartText {
  /** Places in order, joined to a ring. */
  ring: XY;
  /** Places on the ring worth a mark, each with its words. */
  marks: readonly {
    x: number;
    y: number;
    label: string;
    side: 'above' | 'below' | 'left' | 'right';
  }[];
  /** What it is held against. */
  wanted: { x: number; y: number; label: string };
  /** Names of the axes: `resistance, Ω`. */
  xName: string;
  yName: string;
}

const LEFT = 3.4;
const RIGHT = 1.25;
const TALL = 24;

function Ring({ of }: { of: XY }) {
  const s = useScales();
  if (s === null) return null;
  const d = Array.from(of.x, (x, k) => `${s.x(x)} ${s.y(of.y[k] ?? 0)}`).join('L');
  return <path className="chart__curve chart__curve--main" fill="none" d={`M${d}Z`} />;
}

/** A cross: where it should be. */
function Wanted({ x, y, em }: { x: number; y: number; em: number }) {
  const s = useScales();
  if (s === null) return null;
  const [px, py, r] = [s.x(x), s.y(y), em * 0.45];
  return (
    <path
      className="chart__curve chart__curve--other"
      fill="none"
      d={`M${px - r} ${py}H${px + r}M${px} ${py - r}V${py + r}`}
    />
  );
}

function Picture({ width, em, ...props }: LocusChartProps & Measured) {
  const { ring, marks, wanted, xName, yName } = props;
  // One ohm is as long upwards as sideways, so that a circle is one.
  const across = width - (LEFT + RIGHT) * em;
  const up = (TALL - 4.75) * em;
  const right = 1.15 * Math.max(wanted.x, ...Array.from(ring.x));
  const high = 1.2 * Math.max(1e-9, ...Array.from(ring.y, Math.abs));
  const ohm = Math.max(right / across, (2 * high) / up);
  const [to, top] = [ohm * across, (ohm * up) / 2];
  return (
    <Plot
      width={width}
      em={em}
      tall={TALL}
      left={LEFT}
      right={RIGHT}
      x={{ from: 0, to, ticks: ticks(0, to, Math.min(8, width / em / 5)), name: xName }}
      y={{ from: -top, to: top, ticks: ticks(-top, top, 7), name: yName, format: plain }}
    >
      <Ring of={ring} />
      <Wanted x={wanted.x} y={wanted.y} em={em} />
      <CurveName x={wanted.x} y={wanted.y} label={wanted.label} side="below" em={em} />
      {marks.map((mark) => (
        <CurveName key={mark.label} dot em={em} {...mark} />
      ))}
    </Plot>
  );
}

/** A ring of impedances on a plane with equal scales, and the one that is wanted. */
export const LocusChart = memo(function LocusChart(props: LocusChartProps) {
  return (
    <Chart title={props.title} summary={props.summary} table={props.table}>
      {(place) => <Picture {...props} {...place} />}
    </Chart>
  );
});
