import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { useValue } from '../../store/hooks.ts';
import { useExact } from './useExact.ts';

/** Current against voltage at the collector: the way that the final runs once each cycle. */
export function LoadLinePicture() {
  const found = useDeferredValue(useExact());
  const supply = useValue<number>('plan.supply');
  const saturation = useValue<number>('transmit.saturation');
  const load = useValue<number>('transmit.collectorLoad');
  const peak = useValue<number>('transmit.peakCurrent');
  const pair = useValue<string>('transmit.finalForm') === 'pushPull';
  const props = useMemo(() => {
    if (supply === null || saturation === null || load === null || peak === null) return null;
    // One side of a push-pull stage meets half of the load from collector to collector.
    const own = pair ? load / 2 : load;
    const line = { x: [saturation, supply], y: [(supply - saturation) / own, 0] };
    const closed = (v: Float64Array) => [...v, v[0] ?? 0];
    const way = found && { x: closed(found.waves.voltage), y: closed(found.waves.current) };
    const mostV = Math.max(2.1 * supply, ...(way?.x ?? []));
    const mostI = Math.max(1.2 * peak, ...(way?.y ?? []));
    const leastI = Math.min(0, ...(way?.y ?? []));
    return {
      curves: [
        ...(way
          ? [
              {
                ...way,
                label: 'the way of each cycle',
                ink: 'main',
                nameAt: 0.7 * supply,
                side: 'right',
              } as const,
            ]
          : []),
        {
          ...line,
          label: 'load line',
          ink: 'reference',
          nameAt: 0.6 * supply,
          side: 'right',
        },
      ],
      x: { from: 0, to: mostV, name: 'V', unit: 'V', step: mostV / 100 },
      y: { from: 1.1 * leastI, to: 1.1 * mostI, name: 'A', unit: 'A' },
      uprights: [{ at: supply, label: 'supply', kind: 'rule' }],
      tall: 18,
    } as const;
  }, [found, supply, saturation, load, peak, pair]);
  if (props === null) return null;
  return (
    <CurveChart
      title="Load line"
      summary="Collector current over collector voltage. A straight way is a pure resistance; a loop means that charge is stored or the load is tuned off."
      {...props}
    />
  );
}
