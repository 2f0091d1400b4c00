import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { useValue } from '../../store/hooks.ts';

interface OverSink {
  readonly sink: Float64Array;
  readonly speech: Float64Array;
  readonly tone: Float64Array;
}

const ZERO = 273.15;

/** Junction temperature against heat sink, for speech and for a steady tone. */
export function SinkPicture() {
  const curve = useDeferredValue(useValue<OverSink>('transmit.overSink'));
  const allowed = useValue<number>('transmit.junctionAllowed');
  const ambient = useValue<number>('plan.ambient');
  const sink = useValue<number>('transmit.sink');
  const onSink = useValue<string>('transmit.cooling') === 'sink';
  const props = useMemo(() => {
    if (curve === null || allowed === null || ambient === null) return null;
    const celsius = (t: Float64Array) => t.map((k) => k - ZERO);
    // Drawn as far as it matters: half as much again as is allowed.
    const top = ambient - ZERO + 1.5 * (allowed - ambient);
    return {
      curves: [
        {
          x: curve.sink,
          y: celsius(curve.tone),
          label: 'steady tone',
          ink: 'main',
          nameAt: 30,
          side: 'above',
        },
        {
          x: curve.sink,
          y: celsius(curve.speech),
          label: 'speech',
          ink: 'other',
          nameAt: 45,
          side: 'below',
        },
      ],
      x: { from: 0, to: 60, name: 'K/W of the heat sink', unit: 'K/W', step: 0.5 },
      y: {
        from: Math.floor((ambient - ZERO) / 10) * 10,
        to: top,
        name: '°C',
        unit: '°C',
        decimals: 0,
      },
      flats: [{ at: allowed - ZERO, label: 'allowed', end: 'right', side: 'above' }],
      uprights:
        onSink && sink !== null && sink <= 60
          ? [{ at: sink, label: 'this one', kind: 'live' as const }]
          : [],
      tall: 15,
    } as const;
  }, [curve, allowed, ambient, sink, onSink]);
  if (props === null) return null;
  return (
    <CurveChart
      title="Junction over heat sink"
      summary="In the warmest air. To the left the larger heat sinks; where a curve crosses the line, no smaller one will do."
      {...props}
    />
  );
}
