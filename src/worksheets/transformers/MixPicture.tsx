import { memo, useDeferredValue, useMemo } from 'react';
import { CurveChart, type CurveChartProps } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Losses {
  readonly frequency: Float64Array;
  readonly in61: Float64Array;
  readonly in43: Float64Array;
  readonly in77: Float64Array;
}

interface Mix {
  readonly label: string;
  readonly core: string;
  readonly loss: number;
}

const MHZ = 1e6;

/** Loss of one transformer in each mix from 1 to 30 MHz. */
export const MixPicture = memo(function MixPicture() {
  const losses = useDeferredValue(useValue<Losses>('windings.transformerLosses'));
  const mixes = useDeferredValue(useValue<readonly Mix[]>('windings.transformerMixes'));
  const nominal = useDeferredValue(useValue<number>('plan.nominal'));
  const props = useMemo(
    () => (losses && mixes && nominal !== null ? picture(losses, mixes, nominal) : null),
    [losses, mixes, nominal],
  );
  return props && <CurveChart {...props} />;
});

function picture(losses: Losses, mixes: readonly Mix[], nominal: number): CurveChartProps {
  const x = losses.frequency.map((hz) => hz / MHZ);
  const most = Math.max(0.5, ...mixes.map(({ loss }) => 2.5 * loss));
  const name = (i: number) => mixes[i]?.core ?? '';
  return {
    title: `${mixes[0]?.label ?? 'One transformer'} in each mix`,
    summary: `At ${format(nominal, 'Hz', 3)}: ${mixes
      .map(({ core, loss }) => `${core} loses ${format(loss, 'dB', 4)}`)
      .join(', ')}. Below, every winding runs out of reactance; above, the ferrite takes more.`,
    curves: [
      { x, y: losses.in61, label: name(0), ink: 'main', nameAt: 26, side: 'below' },
      { x, y: losses.in43, label: name(1), ink: 'other', nameAt: 12, side: 'below' },
      { x, y: losses.in77, label: name(2), ink: 'reference', nameAt: 16, side: 'above' },
    ],
    x: { from: 0, to: 30, name: 'MHz', unit: 'MHz', step: 0.5 },
    y: { from: 0, to: Math.ceil(most * 2) / 2, name: 'dB', unit: 'dB', decimals: 2 },
    uprights: [{ at: nominal / MHZ, label: 'operating frequency', kind: 'live' }],
    tall: 15,
  };
}
