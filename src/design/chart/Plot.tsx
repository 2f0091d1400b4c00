import { memo, type ReactNode, useMemo } from 'react';
import { CartesianGrid, ComposedChart, Line, XAxis, YAxis, ZIndexLayer } from 'recharts';
import { AxisName } from './AxisName.tsx';
import { Hatch } from './Hatch.tsx';
import { heightAt, thinned, type XY } from './thinned.ts';
import { plain } from './ticks.ts';

export interface PlotAxis {
  from: number;
  to: number;
  ticks: readonly number[];
  /** Stands at the axis's end: quantity and unit. */
  name?: string;
  /** Which end of a top axis its name stands at. */
  nameAt?: 'start' | 'end';
  format?: (value: number) => string;
  /** Places with names instead of a scale: no lines run up from them. */
  named?: boolean;
  /** A second line under each tick. */
  under?: (value: number) => string;
}

export interface Curve extends XY {
  key: string;
  /** `main` heavy and whole, `other` whole and thinner, `reference` thin and dashed. */
  ink: 'main' | 'other' | 'reference';
}

interface PlotProps {
  width: number;
  em: number;
  /** Height in em. */
  tall: number;
  x: PlotAxis;
  y: PlotAxis;
  /** A second scale along the top, over the same stretch as `x`. */
  top?: PlotAxis | undefined;
  curves?: readonly Curve[];
  /** Room for the names of the vertical axis, in em. */
  left?: number;
  /** Room to the right of the picture, in em. */
  right?: number;
  /** Layers under the curves: bands. */
  under?: ReactNode;
  /** Layers over the curves: marks and words. */
  children?: ReactNode;
}

/** One row a place along the axis, with each curve's height there. */
function rowsOf(curves: readonly Curve[], from: number, to: number) {
  const most = Math.floor(280 / Math.max(1, curves.length));
  const shared = curves.every((curve) => curve.x === curves[0]?.x);
  const places =
    shared && curves.length === 1
      ? thinned(curves[0] ?? { x: [], y: [] }, from, to, most).map((point) => point.x)
      : [...new Set(curves.flatMap((c) => thinned(c, from, to, most).map((p) => p.x)))].sort(
          (a, b) => a - b,
        );
  return places.map((x) => {
    const row: Record<string, number | null> = { x };
    for (const curve of curves) {
      const height = heightAt(curve, x);
      row[curve.key] = Number.isFinite(height) ? height : null;
    }
    return row;
  });
}

interface TickProps {
  x?: number | string;
  y?: number | string;
  payload?: { value: number };
}

const tickFor =
  (axis: PlotAxis, em: number) =>
  ({ x, y, payload }: TickProps) => (
    <text x={x} y={Number(y) + em * 0.75} textAnchor="middle">
      {(axis.format ?? plain)(payload?.value ?? 0)}
      {axis.under && (
        <tspan className="chart__soft" x={x} dy={em * 1.2}>
          {axis.under(payload?.value ?? 0)}
        </tspan>
      )}
    </text>
  );

/** A tick of the scale at the left or along the top. */
const besideFor =
  (axis: PlotAxis, at: { anchor: 'end' | 'middle'; dy: number }) =>
  ({ x, y, payload }: TickProps) => (
    <text className="chart__soft" x={x} y={Number(y) + at.dy} textAnchor={at.anchor}>
      {(axis.format ?? plain)(payload?.value ?? 0)}
    </text>
  );

/** Axes, grid and curves; everything else is a layer laid over it by the chart itself. */
export const Plot = memo(function Plot(props: PlotProps) {
  const {
    width,
    em,
    tall,
    x,
    y,
    top,
    curves = [],
    left = 2.75,
    right = 0.75,
    under,
    children,
  } = props;
  const rows = useMemo(() => rowsOf(curves, x.from, x.to), [curves, x.from, x.to]);
  return (
    <ComposedChart
      className="plot"
      width={width}
      height={Math.round(tall * em)}
      data={rows}
      margin={{
        top: em * (top ? 1.9 : 1.6),
        right: right * em,
        bottom: em * 0.25,
        left: 0,
      }}
      accessibilityLayer={false}
    >
      <Hatch />
      <CartesianGrid
        horizontal={y.named !== true}
        horizontalValues={[...y.ticks]}
        verticalValues={[...x.ticks]}
        vertical={x.named !== true}
      />
      <XAxis
        dataKey="x"
        type="number"
        domain={[x.from, x.to]}
        ticks={[...x.ticks]}
        interval={0}
        allowDataOverflow
        height={em * (x.under ? 3 : x.name === undefined ? 1.6 : 2.9)}
        tickLine={false}
        tick={tickFor(x, em)}
      />
      {top && (
        <XAxis
          xAxisId="top"
          orientation="top"
          dataKey="x"
          type="number"
          domain={[top.from, top.to]}
          ticks={[...top.ticks]}
          interval={0}
          allowDataOverflow
          height={em * 0.25}
          tickLine
          tick={besideFor(top, { anchor: 'middle', dy: 0 })}
        />
      )}
      <YAxis
        type="number"
        domain={[y.from, y.to]}
        ticks={[...y.ticks]}
        interval={0}
        allowDataOverflow
        width={left * em}
        tickLine={false}
        axisLine={false}
        tick={besideFor(y, { anchor: 'end', dy: em * 0.32 })}
      />
      {under}
      <ZIndexLayer zIndex={700}>{children}</ZIndexLayer>
      {curves.map((curve) => (
        <Line
          key={curve.key}
          className={`chart__curve chart__curve--${curve.ink}`}
          dataKey={curve.key}
          type="linear"
          dot={false}
          activeDot={false}
          connectNulls={false}
          isAnimationActive={false}
        />
      ))}
      <AxisName x={x.name} y={y.name} top={top} em={em} />
    </ComposedChart>
  );
});
