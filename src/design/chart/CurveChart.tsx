import { memo, useMemo } from 'react';
import { words } from '../words.ts';
import { Band } from './Band.tsx';
import { Chart, type ChartText } from './Chart.tsx';
import { CurveName } from './CurveName.tsx';
import { Flat, type FlatProps } from './Flat.tsx';
import { type Curve, Plot } from './Plot.tsx';
import { Reader } from './Reader.tsx';
import { heightAt, type XY } from './thinned.ts';
import { plain, ticks } from './ticks.ts';
import { Upright } from './Upright.tsx';
import type { Measured } from './useMeasured.ts';

export interface NamedCurve extends XY {
  label: string;
  ink: Curve['ink'];
  /** Where along the axis its name stands, and on which side. */
  nameAt: number;
  side?: 'above' | 'below' | 'right' | 'left';
  /** Left out where the figures are read off: a limit of another curve. */
  silent?: boolean;
}

export interface CurveChartProps extends ChartText {
  curves: readonly NamedCurve[];
  x: {
    from: number;
    to: number;
    name: string;
    unit: string;
    step: number;
    ticks?: readonly number[];
    /** Where the axis isn’t in the unit itself: a scale of powers. */
    format?: (value: number) => string;
  };
  y: {
    from: number;
    to: number;
    name: string;
    unit: string;
    ticks?: readonly number[];
    format?: (value: number) => string;
    /** Decimals that are read off; one by itself. */
    decimals?: number;
  };
  bands?: readonly { from: number; to: number; kind: 'wanted' | 'unwanted'; label?: string }[];
  uprights?: readonly { at: number; label: string; kind: 'live' | 'rule' }[];
  /** Heights that a curve is held against. */
  flats?: readonly Omit<FlatProps, 'em'>[];
  /** Figures worth reading off without a pointer. */
  points?: readonly {
    x: number;
    y: number;
    label: string;
    side?: 'above' | 'below' | 'right' | 'left';
  }[];
  tall?: number;
}

function Picture({ width, em, ...props }: CurveChartProps & Measured) {
  const { curves, x, y, bands = [], uprights = [], flats = [], points = [], tall = 18 } = props;
  const drawn = useMemo<Curve[]>(
    () =>
      curves.map((curve, index) => ({ x: curve.x, y: curve.y, ink: curve.ink, key: `c${index}` })),
    [curves],
  );
  const first = curves.find((curve) => curve.ink === 'main') ?? curves[0];
  return (
    <Plot
      width={width}
      em={em}
      tall={tall}
      x={{
        from: x.from,
        to: x.to,
        ticks: x.ticks ?? ticks(x.from, x.to, Math.min(10, width / em / 4.5)),
        name: x.name,
        ...(x.format ? { format: x.format } : {}),
      }}
      y={{
        from: y.from,
        to: y.to,
        ticks: y.ticks ?? ticks(y.from, y.to, tall / 3),
        name: y.name,
        ...(y.format ? { format: y.format } : {}),
      }}
      curves={drawn}
      under={bands.map((band) => <Band key={`${band.from}`} em={em} {...band} />)}
    >
      {flats.map((flat) => (
        <Flat key={flat.label} em={em} {...flat} />
      ))}
      {uprights.map((upright, index) => (
        <Upright key={upright.label} em={em} line={index} {...upright} />
      ))}
      {curves.map((curve) => {
        const height = heightAt(curve, curve.nameAt);
        if (height === null) return null;
        const { nameAt, label, side = 'above' } = curve;
        return <CurveName key={label} x={nameAt} y={height} label={label} side={side} em={em} />;
      })}
      {points.map((point) => (
        <CurveName key={`${point.x} ${point.label}`} dot em={em} side="right" {...point} />
      ))}
      <Reader
        from={x.from}
        to={x.to}
        step={x.step}
        start={(x.from + x.to) / 2}
        label={words.chart.read}
        heightAt={(at) => (first ? heightAt(first, at) : null)}
        says={(at) => {
          const said = curves.filter((curve) => !curve.silent);
          const figures = said.map((curve) => {
            const height = heightAt(curve, at);
            return height === null
              ? '–'
              : (y.format ?? plain)(Number(height.toFixed(y.decimals ?? 1)));
          });
          return `${x.format ? x.format(at) : plain(Number(at.toPrecision(4)))} ${x.unit}: ${figures.join(', ')} ${y.unit}`;
        }}
        em={em}
      />
    </Plot>
  );
}

/** One or more curves over an axis, each named where it runs. */
export const CurveChart = memo(function CurveChart(props: CurveChartProps) {
  return (
    <Chart title={props.title} summary={props.summary} table={props.table}>
      {(place) => <Picture {...props} {...place} />}
    </Chart>
  );
});
