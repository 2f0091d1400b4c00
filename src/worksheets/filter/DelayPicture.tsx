import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Response {
  readonly frequency: Float64Array;
  readonly delay: Float64Array;
  readonly returnLoss: Float64Array;
}

/** Group delay over the passband: what it does to the edges of speech. */
export function DelayPicture() {
  const response = useDeferredValue(useValue<Response>('filter.response'));
  const fs = useValue<number>('quartz.fs');
  const low = useValue<number>('filter.low20');
  const high = useValue<number>('filter.high20');
  const curve = useMemo(() => {
    if (response === null || fs === null || low === null || high === null) return null;
    const inside = [...response.frequency.keys()].filter((i) => {
      const f = response.frequency[i] ?? 0;
      return f >= low && f <= high;
    });
    const x = inside.map((i) => ((response.frequency[i] ?? 0) - fs) / 1000);
    const y = inside.map((i) => (response.delay[i] ?? 0) * 1000);
    return { x, y, most: Math.max(...y, 0.1) };
  }, [response, fs, low, high]);
  if (!curve || fs === null) return null;
  const top = Math.ceil(curve.most * 2.4) / 2;
  return (
    <CurveChart
      title="Group delay"
      summary={`At most ${format(curve.most / 1000, 's', 2)}, at the edges: speech does not mind, data modes may.`}
      curves={[{ x: curve.x, y: curve.y, label: '', ink: 'main', nameAt: curve.x[0] ?? 0 }]}
      x={{
        from: curve.x[0] ?? 0,
        to: curve.x.at(-1) ?? 1,
        name: `kHz from ${format(fs, 'Hz', 7)}`,
        unit: 'kHz',
        step: 0.02,
      }}
      y={{ from: 0, to: top, name: 'ms', unit: 'ms' }}
      tall={12}
    />
  );
}
