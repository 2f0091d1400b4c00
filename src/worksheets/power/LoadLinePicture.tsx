import { useDeferredValue, useMemo } from 'react';
import { LoopChart } from '../../design/chart/LoopChart.tsx';
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
    const middle = (supply + saturation) / 2;
    const line = {
      x: [saturation, middle, supply],
      y: [(supply - saturation) / own, (supply - middle) / own, 0],
      label: 'load line',
    };
    const closed = (v: Float64Array) => [...v, v[0] ?? 0];
    const loop = found && {
      x: closed(found.waves.voltage),
      y: closed(found.waves.current),
      label: 'the way of each cycle',
    };
    const mostV = Math.max(2.1 * supply, ...(loop?.x ?? []));
    const mostI = Math.max(1.2 * peak, ...(loop?.y ?? []));
    const leastI = Math.min(0, ...(loop?.y ?? []));
    return {
      loop,
      line,
      x: { from: 0, to: mostV, name: 'V' },
      y: { from: 1.1 * leastI, to: 1.1 * mostI, name: 'A' },
      uprights: [{ at: supply, label: 'supply' }],
    } as const;
  }, [found, supply, saturation, load, peak, pair]);
  if (props === null) return null;
  return (
    <LoopChart
      title="Load line"
      summary="Collector current over collector voltage. A straight way is a pure resistance; a loop means that charge is stored or the load is tuned off."
      {...props}
    />
  );
}
