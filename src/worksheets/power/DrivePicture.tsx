import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { useExact } from './useExact.ts';

/** Gain over power: where it falls, speech flattens. */
export function DrivePicture() {
  const found = useDeferredValue(useExact());
  const curve = found?.overDrive ?? null;
  const props = useMemo(() => {
    if (curve === null) return null;
    const most = curve.power.at(-1) ?? 1;
    const low = Math.min(...curve.gain, -0.5);
    const high = Math.max(...curve.gain, 0.5);
    return {
      curves: [
        {
          x: curve.power,
          y: curve.gain,
          label: 'gain',
          ink: 'main',
          nameAt: 0.6 * most,
          side: 'above',
        },
      ],
      x: { from: 0, to: most, name: 'W at the antenna', unit: 'W', step: most / 60 },
      y: {
        from: Math.floor(low - 0.5),
        to: Math.ceil(high + 0.5),
        name: 'dB',
        unit: 'dB',
        decimals: 2,
      },
      flats: [{ at: 0, label: 'as at full power', end: 'left', side: 'below' }],
      tall: 13,
    } as const;
  }, [curve]);
  if (props === null) return null;
  return (
    <CurveChart
      title="Gain over power"
      summary="Against that at full power. The more it changes on the way up, the more two tones make others: their products follow from this curve and from the phase."
      {...props}
    />
  );
}
