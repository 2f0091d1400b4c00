import { useDeferredValue, useMemo } from 'react';
import { CurveChart } from '../../design/chart/CurveChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Response {
  readonly frequency: Float64Array;
  readonly level: Float64Array;
}

const MHZ = 1e6;
const FLOOR = -100;

/** The band-pass over frequency, with the places of what it has to part. */
export function FrontPicture() {
  const response = useDeferredValue(useValue<Response>('front.response'));
  const nominal = useDeferredValue(useValue<number>('plan.nominal'));
  const image = useDeferredValue(useValue<number>('convert.image'));
  const oscillator = useDeferredValue(useValue<number>('convert.oscillator'));
  const carrier = useDeferredValue(useValue<number>('carrier.frequency'));
  const loss = useValue<number>('front.loss');
  const props = useMemo(() => {
    if (response === null || nominal === null) return null;
    const from = (response.frequency[0] ?? 0) / MHZ;
    const to = (response.frequency.at(-1) ?? 0) / MHZ;
    const places = [
      { at: nominal, label: 'signal', kind: 'live' },
      { at: image, label: 'image', kind: 'rule' },
      { at: oscillator, label: 'oscillator', kind: 'rule' },
      { at: carrier, label: 'filter', kind: 'rule' },
    ] as const;
    return {
      curves: [
        {
          x: response.frequency.map((hz) => hz / MHZ),
          y: response.level.map((level) => Math.max(FLOOR - 20, level)),
          label: 'band-pass',
          ink: 'main',
          nameAt: (nominal / MHZ) * 1.25,
          side: 'right',
        },
      ],
      x: { from, to, name: 'MHz', unit: 'MHz', step: (to - from) / 200 },
      y: { from: FLOOR, to: 12, name: 'dB', unit: 'dB', ticks: [0, -20, -40, -60, -80, -100] },
      uprights: places.flatMap(({ at, label, kind }) =>
        at === null || at / MHZ < from || at / MHZ > to ? [] : [{ at: at / MHZ, label, kind }],
      ),
    } as const;
  }, [response, nominal, image, oscillator, carrier]);
  if (props === null) return null;
  return (
    <CurveChart
      title="Response of the band-pass"
      summary={`Against the operating frequency, where ${format(loss ?? Number.NaN, 'dB', 1)} is lost in the coils.`}
      {...props}
    />
  );
}
