import { memo } from 'react';
import { ResponseChart, type ResponseChartProps } from './ResponseChart.tsx';

type StripProps = Omit<ResponseChartProps, 'floor' | 'ceiling' | 'tall'> & {
  /** dB below the top of the strip. */
  depth?: number;
};

/** The passband under the glass: 0 … −6 dB over the same axis. */
export const PassbandStrip = memo(function PassbandStrip({ depth = 6, ...rest }: StripProps) {
  return <ResponseChart {...rest} floor={-depth} ceiling={0} tall={12} />;
});
