import { memo, useDeferredValue, useMemo } from 'react';
import { CurveChart, type CurveChartProps } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface OverNoise {
  readonly ratio: Float64Array;
  readonly asIs: Float64Array;
  readonly lower: Float64Array;
  readonly higher: Float64Array;
}

/** The index over signal to noise, for the filter as it is and with an edge moved. */
export const IndexPicture = memo(function IndexPicture() {
  const over = useValue<OverNoise>('speech.overNoise');
  const now = useValue<number>('hear.ratioUsed');
  const more = useValue<number>('speech.more') ?? 0;
  const chart = useDeferredValue(
    useMemo(() => (over ? drawn(over, now, more) : null), [over, now, more]),
  );
  return chart && <CurveChart {...chart} />;
});

function drawn(over: OverNoise, now: number | null, more: number): CurveChartProps {
  const { ratio } = over;
  const [from, to] = [ratio[0] ?? 0, ratio[ratio.length - 1] ?? 1];
  const by = format(more, 'Hz', 3);
  return {
    title: 'The index over signal to noise',
    summary: `For the filter as it is, with the lower edge ${by} lower, and with the upper edge ${by} higher. Good above 0.75, poor below 0.45.`,
    curves: [
      { x: ratio, y: over.asIs, label: 'as it is', ink: 'main', nameAt: 20, side: 'below' },
      { x: ratio, y: over.lower, label: 'lower edge', ink: 'reference', nameAt: 8, side: 'below' },
      { x: ratio, y: over.higher, label: 'upper edge', ink: 'other', nameAt: 32, side: 'above' },
    ],
    x: { from, to, name: 'signal over noise, dB', unit: 'dB', step: 1 },
    y: { from: 0, to: 1, name: 'index', unit: '1', ticks: [0, 0.25, 0.5, 0.75, 1], decimals: 2 },
    flats: [
      { at: 0.75, label: 'good', end: 'left' },
      { at: 0.45, label: 'poor', end: 'left' },
    ],
    ...(now !== null && now >= from && now <= to
      ? { uprights: [{ at: now, label: 'now', kind: 'live' as const }] }
      : {}),
    tall: 17,
  };
}
