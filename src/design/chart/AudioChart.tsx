import { memo } from 'react';
import { words } from '../words.ts';
import { CurveChart, type CurveChartProps } from './CurveChart.tsx';

type AudioChartProps = Omit<CurveChartProps, 'x' | 'y'> & {
  /** Hz at the right-hand end. */
  upTo?: number;
  /** dB at the lower edge. */
  floor?: number;
};

/** Sidebands or response against the audio tone. */
export const AudioChart = memo(function AudioChart(props: AudioChartProps) {
  const { upTo = 4000, floor = -80, ...rest } = props;
  return (
    <CurveChart
      {...rest}
      x={{ from: 0, to: upTo, name: words.chart.audioHz, unit: 'Hz', step: 50 }}
      y={{ from: floor, to: 0, name: 'dB', unit: 'dB' }}
    />
  );
});
