import type { ReactNode } from 'react';
import { CartesianGrid, ComposedChart, XAxis, YAxis } from 'recharts';
import { Hatch } from './Hatch.tsx';
import type { Scale } from './scale.ts';

interface FrameProps {
  width: number;
  em: number;
  tall: number;
  x: Scale;
  y: Scale;
  left: number;
  right: number;
  /** Room over the picture, in em. */
  above: number;
  children: ReactNode;
}

interface TickProps {
  x?: number | string;
  y?: number | string;
  payload?: { value: number };
}

const nothing: never[] = [];

/** A figure of the lower scale, with its second line if it has one. */
const belowFor =
  (scale: Scale, em: number) =>
  ({ x, y, payload }: TickProps) => {
    const mark = scale.marks.find((one) => one.at === payload?.value);
    return (
      <text x={x} y={Number(y) + em * 0.75} textAnchor="middle">
        {mark?.text}
        {mark?.under !== '' && (
          <tspan className="chart__soft" x={x} dy={em * 1.2}>
            {mark?.under}
          </tspan>
        )}
      </text>
    );
  };

/** A figure of the scale at the left. */
const besideFor =
  (scale: Scale, em: number) =>
  ({ x, y, payload }: TickProps) => (
    <text className="chart__soft" x={x} y={Number(y) + em * 0.32} textAnchor="end">
      {scale.marks.find((one) => one.at === payload?.value)?.text}
    </text>
  );

/** The axes and the grid. */
export function Frame({ width, em, tall, x, y, left, right, above, children }: FrameProps) {
  const places = { x: x.marks.map((mark) => mark.at), y: y.marks.map((mark) => mark.at) };
  return (
    <ComposedChart
      className="plot"
      width={width}
      height={Math.round(tall * em)}
      data={nothing}
      margin={{ top: em * above, right: right * em, bottom: em * 0.25, left: 0 }}
      accessibilityLayer={false}
    >
      <Hatch />
      <CartesianGrid
        horizontal={!y.named}
        vertical={!x.named}
        horizontalValues={places.y}
        verticalValues={places.x}
      />
      <XAxis
        dataKey="x"
        type="number"
        domain={[x.from, x.to]}
        ticks={places.x}
        interval={0}
        allowDataOverflow
        height={em * (x.marks.some((mark) => mark.under !== '') ? 3 : 2.9)}
        tickLine={false}
        tick={belowFor(x, em)}
      />
      <YAxis
        type="number"
        domain={[y.from, y.to]}
        ticks={places.y}
        interval={0}
        allowDataOverflow
        width={left * em}
        tickLine={false}
        axisLine={false}
        tick={besideFor(y, em)}
      />
      {children}
    </ComposedChart>
  );
}
