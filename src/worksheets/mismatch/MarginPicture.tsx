import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { inDegrees, roundAxis } from './useRound.ts';

interface MarginRound {
  readonly angle: Float64Array;
  readonly margin: Float64Array;
}

/** How much the harmonics have to spare over the angle. */
export function MarginPicture() {
  const round = useDeferredValue(useValue<MarginRound>('mismatch.marginAround'));
  const wanted = useValue<number>('output.marginWanted');
  const least = useValue<number>('mismatch.margin');
  const props = useMemo(() => {
    if (round === null || wanted === null) return null;
    const { margin } = round;
    const [low, high] = [Math.min(0, ...margin), Math.max(wanted, ...margin)];
    const room = (high - low) * 0.2;
    return {
      curves: [
        {
          x: inDegrees(round.angle),
          y: margin,
          label: 'least margin',
          ink: 'main',
          nameAt: 180,
          side: 'above',
        },
      ],
      x: roundAxis,
      y: { from: low < 0 ? low - room : 0, to: high + room, name: 'dB', unit: 'dB' },
      flats: [
        { at: wanted, label: 'margin wanted', end: 'left', side: 'above' },
        ...(low < 0 ? [{ at: 0, label: 'limit', end: 'left', side: 'below' } as const] : []),
      ],
    } as const;
  }, [round, wanted]);
  if (props === null) return null;
  return (
    <CurveChart
      title="Margin once round"
      summary={`At the worst angle ${format(least ?? Number.NaN, 'dB', 3)} are left to the limit, the antenna a plain resistance at the harmonics.`}
      tall={14}
      {...props}
    />
  );
}
