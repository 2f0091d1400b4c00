import { memo, useDeferredValue, useMemo } from 'react';
import { BandsChart, type BandsChartProps } from '../../design/chart/BandsChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Band {
  readonly middle: number;
  readonly importance: number;
  readonly audible: number;
  readonly brings: number;
}

/** The bands of speech: what each is worth, and how much of it is heard. */
export const BandsPicture = memo(function BandsPicture() {
  const bands = useValue<readonly Band[]>('speech.bands');
  const chart = useDeferredValue(useMemo(() => (bands ? drawn(bands) : null), [bands]));
  return chart && <BandsChart {...chart} />;
});

function drawn(bands: readonly Band[]): BandsChartProps {
  const lost = [...bands].sort((a, b) => b.importance - b.brings - (a.importance - a.brings));
  const most = lost
    .slice(0, 3)
    .map(({ middle }) => middle)
    .sort((a, b) => a - b)
    .map((middle) => format(middle, 'Hz', 3));
  return {
    title: 'What is heard of speech, band by band',
    summary: `Bands of a third of an octave. Most is lost at ${most.join(', ')}.`,
    bands: bands.map(({ middle, importance, brings }) => ({
      name: middle < 1000 ? String(middle) : `${middle / 1000}k`,
      whole: 100 * importance,
      part: 100 * brings,
    })),
    xName: 'Hz',
    yName: '% of the meaning',
    whole: 'what the band is worth',
    part: 'heard of it',
  };
}
