import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { useValue } from '../../store/hooks.ts';
import { useExact } from './useExact.ts';

interface Curve {
  readonly supply: Float64Array;
  readonly power: Float64Array;
  readonly efficiency: Float64Array;
}

/** Peak envelope power against supply: the square law, and what the model makes of it. */
export function SupplyPicture() {
  const hand = useDeferredValue(useValue<Curve>('power.overSupply'));
  const found = useDeferredValue(useExact());
  const supply = useValue<number>('plan.supply');
  const props = useMemo(() => {
    if (hand === null || supply === null) return null;
    const exact = found?.overSupply ?? null;
    const from = hand.supply[0] ?? 0;
    const to = hand.supply.at(-1) ?? 1;
    const most = Math.max(...hand.power, ...(exact?.power ?? []));
    return {
      curves: [
        ...(exact
          ? [
              {
                x: exact.supply,
                y: exact.power,
                label: 'from the model, the drive unchanged',
                ink: 'main',
                nameAt: from + 0.25 * (to - from),
                side: 'above',
              } as const,
            ]
          : []),
        {
          x: hand.supply,
          y: hand.power,
          label: 'square law',
          ink: 'reference',
          nameAt: from + 0.75 * (to - from),
          side: 'below',
        },
      ],
      x: { from, to, name: 'V', unit: 'V', step: (to - from) / 60 },
      y: { from: 0, to: 1.15 * most, name: 'W', unit: 'W', decimals: 2 },
      uprights: [{ at: supply, label: 'planned', kind: 'live' }],
      tall: 15,
    } as const;
  }, [hand, found, supply]);
  if (props === null) return null;
  return (
    <CurveChart
      title="Power over supply"
      summary="With the same load and drive. A battery at its end costs what the curve says; a higher supply gives more only while the driver follows."
      {...props}
    />
  );
}
