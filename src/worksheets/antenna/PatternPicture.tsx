import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Pattern {
  readonly elevation: Float64Array;
  readonly gain: Float64Array;
}

const DEGREE = Math.PI / 180;
const FLOOR = -20;

/** The antenna's gain over elevation, with the ray that the Path sheet takes. */
export function PatternPicture() {
  const pattern = useDeferredValue(useValue<Pattern>('antenna.pattern'));
  const ray = useDeferredValue(useValue<number>('path.elevation'));
  const sky = useValue<string>('path.route') === 'skyWave';
  const best = useValue<number>('antenna.best');
  const bestAt = useValue<number>('antenna.bestAt');
  const props = useMemo(() => {
    if (pattern === null) return null;
    const most = Math.max(...pattern.gain);
    return {
      curves: [
        {
          x: pattern.elevation.map((angle) => angle / DEGREE),
          y: pattern.gain.map((gain) => Math.max(FLOOR - 5, gain)),
          label: 'gain',
          ink: 'main',
          nameAt: 45,
          side: 'above',
        },
      ],
      x: { from: 0, to: 90, name: '° over the horizon', unit: '°', step: 1 },
      y: { from: FLOOR, to: Math.ceil(most + 3), name: 'dBi', unit: 'dBi' },
      bands: [
        { from: 0, to: 25, kind: 'wanted', label: 'far' },
        { from: 60, to: 90, kind: 'wanted', label: 'near' },
      ],
      uprights:
        ray === null || !sky || ray < 0
          ? []
          : [{ at: ray / DEGREE, label: 'this path', kind: 'live' as const }],
    } as const;
  }, [pattern, ray, sky]);
  if (props === null || best === null || bestAt === null) return null;
  return (
    <CurveChart
      title="Gain over elevation"
      summary={`Most at ${format(bestAt, '°', 2)}: ${format(best, 'dBi', 3)}.`}
      {...props}
    />
  );
}
