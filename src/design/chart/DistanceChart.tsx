import { memo } from 'react';
import { words } from '../words.ts';
import { CurveChart, type CurveChartProps } from './CurveChart.tsx';

type DistanceChartProps = Omit<CurveChartProps, 'x' | 'y'> & {
  /** km at the right-hand end. */
  upTo: number;
  /** The vertical axis: signal to noise in dB, or S-units with their own format. */
  y: CurveChartProps['y'];
};

/** What is left of the signal against distance. */
export const DistanceChart = memo(function DistanceChart({ upTo, ...rest }: DistanceChartProps) {
  return (
    <CurveChart
      {...rest}
      x={{ from: 0, to: upTo, name: words.chart.km, unit: 'km', step: upTo / 200 }}
    />
  );
});
