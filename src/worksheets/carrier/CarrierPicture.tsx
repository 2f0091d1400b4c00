import { useDeferredValue, useMemo } from 'react';
import { AudioChart } from '../../design/chart/AudioChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Audio {
  readonly tone: Float64Array;
  readonly wanted: Float64Array;
  readonly opposite: Float64Array;
}

/** Both sidebands against the audio tone: what is heard, and what is left of the other side. */
export function CarrierPicture() {
  const audio = useDeferredValue(useValue<Audio>('carrier.audio'));
  const low = useValue<number>('carrier.audioLow6');
  const high = useValue<number>('carrier.audioHigh6');
  const at300 = useValue<number>('carrier.suppression300');
  const at1k = useValue<number>('carrier.suppression1k');
  const curves = useMemo(
    () =>
      audio === null
        ? []
        : ([
            {
              x: audio.tone,
              y: audio.wanted,
              label: 'wanted',
              ink: 'main',
              nameAt: 1500,
              side: 'above',
            },
            {
              x: audio.tone,
              y: audio.opposite,
              label: 'other sideband',
              ink: 'reference',
              nameAt: 700,
              side: 'right',
            },
          ] as const),
    [audio],
  );
  if (audio === null || low === null || high === null) return null;
  return (
    <AudioChart
      title="The voice through the filter"
      summary={`Heard from ${format(low, 'Hz', 3)} to ${format(high, 'Hz', 3)} at −6 dB. The other sideband is ${format(at300 ?? 0, 'dB', 2)} down at 300 Hz and ${format(at1k ?? 0, 'dB', 2)} at 1 kHz.`}
      curves={curves}
      bands={[{ from: low, to: high, kind: 'wanted', label: 'heard' }]}
      upTo={3500}
      floor={-90}
      tall={20}
    />
  );
}
