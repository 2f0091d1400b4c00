import { memo, useDeferredValue, useMemo } from 'react';
import { CurveChart, type CurveChartProps } from '../../design/chart/CurveChart.tsx';
import type { CompareAnswer } from '../../engine/errands/compare/compareAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { filterInks, foundIn } from './filterInks.ts';

/** Audio tones, Hz, and how far down the pictures go, dB. */
const UP_TO = 3500;
const FLOOR = -80;

/** The voice through each filter: the sideband that is wanted, and the other one. */
export const VoiceOverlay = memo(function VoiceOverlay({ answer }: { answer: CompareAnswer }) {
  const pictures = useDeferredValue(useMemo(() => drawn(answer), [answer]));
  return pictures && <Pictures of={pictures} />;
});

const Pictures = memo(function Pictures({ of }: { of: readonly CurveChartProps[] }) {
  return of.map((chart) => <CurveChart key={chart.title} {...chart} />);
});

function drawn(answer: CompareAnswer): readonly CurveChartProps[] | null {
  const heard = foundIn(answer).flatMap(({ name, found: { voice, figures } }) =>
    voice ? [{ name, voice, figures }] : [],
  );
  if (heard.length === 0) return null;
  const x = { from: 0, to: UP_TO, name: 'audio, Hz', unit: 'Hz', step: 50 };
  const y = (floor: number) => ({ from: floor, to: 0, name: 'dB', unit: 'dB' });
  return [
    {
      title: 'Audio through each filter',
      summary: `${heard
        .map(
          ({ name, figures }) =>
            `${name}: ${format(figures.audioLow6 ?? 0, 'Hz', 3)} to ${format(figures.audioHigh6 ?? 0, 'Hz', 4)} at −6 dB`,
        )
        .join('; ')}.`,
      curves: heard.map(({ name, voice }, place) => ({
        x: voice.tone,
        y: voice.wanted,
        label: name,
        ink: filterInks[name],
        nameAt: placeAt(voice.tone, voice.wanted, -10 - 7 * place),
        side: 'right' as const,
      })),
      x,
      y: y(-40),
      tall: 15,
    },
    {
      title: 'The other sideband',
      summary: `At a tone of 300 Hz it is ${heard
        .map(({ name, figures }) => `${format(figures.suppression300 ?? 0, 'dB', 3)} (${name})`)
        .join(', ')} below the wanted one.`,
      curves: heard.map(({ name, voice }, place) => ({
        x: voice.tone,
        y: voice.opposite,
        label: name,
        ink: filterInks[name],
        nameAt: placeAt(voice.tone, voice.opposite, -28 - 12 * place),
        side: 'right' as const,
      })),
      x,
      y: y(FLOOR),
      tall: 15,
    },
  ];
}

/** The highest tone at which a curve is still above a level: a name stands clear there. */
function placeAt(x: Float64Array, y: Float64Array, level: number): number {
  for (let i = x.length - 1; i > 0; i -= 1) if ((y[i] ?? 0) > level) return x[i] ?? 0;
  return x[0] ?? 0;
}
