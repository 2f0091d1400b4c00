import { memo, useDeferredValue, useMemo } from 'react';
import { CurveChart, type CurveChartProps } from '../../design/chart/CurveChart.tsx';
import type { Selection } from '../../engine/errands/choose/answer.ts';
import { format } from '../../engine/quantity/format.ts';

/** Both responses over each other, each about the middle of its own passband. */
export const ChoicePicture = memo(function ChoicePicture({ selection }: { selection: Selection }) {
  const drawn = useMemo(() => picture(selection), [selection]);
  const late = useDeferredValue(drawn);
  return <CurveChart {...late} />;
});

function picture({ chosen, closest, offsets }: Selection): CurveChartProps {
  const best = (gain: Float64Array) => Math.max(...gain);
  const down = (gain: Float64Array) => gain.map((one) => one - best(gain));
  const half = Math.max(chosen.width, closest.width) * 0.65;
  const curve = (gain: Float64Array) => ({ x: offsets, y: down(gain) });
  return {
    title: 'The passband, chosen and closest',
    summary: `Ripple ${format(chosen.ripple, 'dB', 4)} against ${format(closest.ripple, 'dB', 4)}, each against its own best point.`,
    curves: [
      {
        ...curve(closest.gain),
        label: 'closest',
        ink: 'reference',
        nameAt: -half * 0.68,
        side: 'left',
      },
      { ...curve(chosen.gain), label: 'chosen', ink: 'main', nameAt: half * 0.5, side: 'right' },
    ],
    x: { from: -half, to: half, name: 'Hz from the middle', unit: 'Hz', step: 10 },
    y: { from: -6, to: 0, name: 'dB', unit: 'dB', decimals: 2 },
    tall: 14,
  };
}
