import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Response {
  readonly frequency: Float64Array;
  readonly level: Float64Array;
}

const MHZ = 1e6;
const FLOOR = -120;

/** The network alone over frequency, with the places of the harmonics. */
export function ResponsePicture() {
  const response = useDeferredValue(useValue<Response>('output.response'));
  const nominal = useDeferredValue(useValue<number>('plan.nominal'));
  const loss = useValue<number>('output.loss');
  const props = useMemo(() => {
    if (response === null || nominal === null) return null;
    const f = nominal / MHZ;
    return {
      curves: [
        {
          x: response.frequency.map((hz) => hz / MHZ),
          y: response.level,
          label: 'network',
          ink: 'main',
          nameAt: f * 4.5,
          side: 'above',
        },
      ],
      x: { from: f / 2, to: f * 6, name: 'MHz', unit: 'MHz', step: f / 20 },
      y: {
        from: FLOOR,
        to: 24,
        name: 'dB',
        unit: 'dB',
        ticks: [0, -20, -40, -60, -80, -100, -120],
      },
      uprights: [
        { at: f, label: 'operating frequency', kind: 'live' },
        { at: 2 * f, label: '2f', kind: 'rule' },
        { at: 3 * f, label: '3f', kind: 'rule' },
      ],
    } as const;
  }, [response, nominal]);
  if (props === null) return null;
  return (
    <CurveChart
      title="Response of the network"
      summary={`Volts at the antenna for the same current out of the collector. At the operating frequency ${format(loss ?? Number.NaN, 'dB', 3)} is lost in the parts.`}
      {...props}
    />
  );
}
