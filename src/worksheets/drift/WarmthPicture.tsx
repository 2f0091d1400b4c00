import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface OverWarmth {
  readonly temperature: Float64Array;
  readonly carrier: Float64Array;
  readonly filter: Float64Array;
}

const ZERO = 273.15;

/** Carrier and filter over temperature, against 25 °C. */
export function WarmthPicture() {
  const curve = useDeferredValue(useValue<OverWarmth>('drift.overWarmth'));
  const against = useValue<number>('drift.against');
  const props = useMemo(() => {
    if (curve === null) return null;
    const x = curve.temperature.map((t) => t - ZERO);
    const all = [...curve.carrier, ...curve.filter, 20, -20];
    const reach = Math.ceil(Math.max(...all.map(Math.abs)) / 20) * 20;
    return {
      curves: [
        { x, y: curve.carrier, label: 'carrier', ink: 'main', nameAt: 42, side: 'above' },
        { x, y: curve.filter, label: 'filter', ink: 'reference', nameAt: -4, side: 'above' },
      ],
      x: { from: -10, to: 50, name: '°C', unit: '°C', step: 1 },
      y: { from: -reach, to: reach, name: 'Hz', unit: 'Hz', decimals: 0 },
      bands: [],
    } as const;
  }, [curve]);
  if (props === null) return null;
  return (
    <CurveChart
      title="From the cold field to the warm shed"
      summary={
        against === null
          ? 'Against 25 °C.'
          : `Against 25 °C. Between carrier and filter ${format(Math.abs(against), 'Hz', 2)} are left over the warming reckoned with.`
      }
      {...props}
    />
  );
}
