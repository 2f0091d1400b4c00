import { memo, useDeferredValue, useMemo } from 'react';
import { AudioChart } from '../../design/chart/AudioChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';

interface Audio {
  readonly tone: Float64Array;
  readonly wanted: Float64Array;
  readonly opposite: Float64Array;
}

interface Voice extends Audio {
  readonly low: number;
  readonly high: number;
  readonly summary: string;
}

/** Both sidebands against the audio tone: what is heard, and what is left of the other side. */
export function CarrierPicture() {
  const audio = useValue<Audio>('carrier.audio');
  const low = useValue<number>('carrier.audioLow6');
  const high = useValue<number>('carrier.audioHigh6');
  const at300 = useValue<number>('carrier.suppression300');
  const at1k = useValue<number>('carrier.suppression1k');
  const voice = useMemo<Voice | null>(() => {
    if (audio === null || low === null || high === null) return null;
    const summary = `Heard from ${format(low, 'Hz', 3)} to ${format(high, 'Hz', 3)} at −6 dB. The other sideband is ${format(at300 ?? 0, 'dB', 2)} down at 300 Hz and ${format(at1k ?? 0, 'dB', 2)} at 1 kHz.`;
    return { ...audio, low, high, summary };
  }, [audio, low, high, at300, at1k]);
  const picture = useDeferredValue(voice);
  return picture && <Picture voice={picture} />;
}

const Picture = memo(function Picture({ voice }: { voice: Voice }) {
  const { tone, wanted, opposite, low, high, summary } = voice;
  return (
    <AudioChart
      title="The voice through the filter"
      summary={summary}
      curves={[
        { x: tone, y: wanted, label: 'wanted', ink: 'main', nameAt: 1500, side: 'above' },
        {
          x: tone,
          y: opposite,
          label: 'other sideband',
          ink: 'reference',
          nameAt: 700,
          side: 'right',
        },
      ]}
      bands={[{ from: low, to: high, kind: 'wanted', label: 'heard' }]}
      upTo={3500}
      floor={-90}
      tall={20}
    />
  );
});
