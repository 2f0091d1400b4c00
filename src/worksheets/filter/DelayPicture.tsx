import { memo, useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Response {
  readonly frequency: Float64Array;
  readonly delay: Float64Array;
  readonly returnLoss: Float64Array;
}

interface Delay {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly most: number;
  readonly fs: number;
}

/** Group delay over the passband: what it does to the edges of speech. */
export function DelayPicture() {
  const response = useValue<Response>('filter.response');
  const fs = useValue<number>('quartz.fs');
  const low = useValue<number>('filter.low20');
  const high = useValue<number>('filter.high20');
  const delay = useMemo(() => {
    if (response === null || fs === null || low === null || high === null) return null;
    return inside(response, fs, low, high);
  }, [response, fs, low, high]);
  const picture = useDeferredValue(delay);
  return picture && <Picture delay={picture} />;
}

function inside(response: Response, fs: number, low: number, high: number): Delay {
  const points = [...response.frequency.keys()].filter((i) => {
    const f = response.frequency[i] ?? 0;
    return f >= low && f <= high;
  });
  const y = points.map((i) => (response.delay[i] ?? 0) * 1000);
  return {
    x: points.map((i) => ((response.frequency[i] ?? 0) - fs) / 1000),
    y,
    most: Math.max(...y, 0.1),
    fs,
  };
}

const Picture = memo(function Picture({ delay: { x, y, most, fs } }: { delay: Delay }) {
  const from = Math.floor(2 * (x[0] ?? 0)) / 2;
  return (
    <CurveChart
      title="Group delay"
      summary={`At most ${format(most / 1000, 's', 2)}, at the edges: speech does not mind, data modes may.`}
      curves={[{ x, y, label: '', ink: 'main', nameAt: x[0] ?? 0 }]}
      x={{
        from,
        to: Math.ceil(2 * (x.at(-1) ?? 1)) / 2,
        name: `kHz from ${format(fs, 'Hz', 7)}`,
        unit: 'kHz',
        step: 0.02,
      }}
      y={{ from: 0, to: Math.ceil(most * 2.4) / 2, name: 'ms', unit: 'ms' }}
      tall={12}
    />
  );
});
