import { memo, useDeferredValue, useMemo } from 'react';
import { CurveChart, type CurveChartProps } from '../../design/chart/CurveChart.tsx';
import type { CompareAnswer } from '../../engine/errands/compare/compareAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { filterInks, foundIn } from './filterInks.ts';

/** How far down the skirts the delay is worth looking at, dB. */
const DOWN = -20;

/** Group delays over each other. */
export const DelayOverlay = memo(function DelayOverlay({ answer }: { answer: CompareAnswer }) {
  const fs = useValue<number>('quartz.fs');
  const drawn = useMemo(() => (fs === null ? null : picture(answer, fs)), [answer, fs]);
  const chart = useDeferredValue(drawn);
  return chart && <CurveChart {...chart} />;
});

function picture(answer: CompareAnswer, fs: number): CurveChartProps | null {
  const curves = foundIn(answer).map(({ name, found }) => {
    const { frequency, gain, delay } = found.response;
    const inside = [...frequency.keys()].filter((i) => (gain[i] ?? -999) > DOWN);
    return {
      name,
      x: inside.map((i) => ((frequency[i] ?? 0) - fs) / 1000),
      y: inside.map((i) => 1000 * (delay[i] ?? 0)),
      variation: found.figures.delayVariation ?? 0,
    };
  });
  if (curves.length === 0) return null;
  const ends = curves.flatMap(({ x }) => [x[0] ?? 0, x.at(-1) ?? 0]);
  const most = Math.max(...curves.flatMap(({ y }) => y), 0.1);
  return {
    title: 'Group delay',
    summary: `Between its −3 dB points it varies by ${curves
      .map(({ name, variation }) => `${format(variation, 's', 2)} (${name})`)
      .join(', ')}.`,
    curves: curves.map(({ name, x, y }, place) => {
      // Each is named at its own place along the middle of the passband.
      const at = Math.round((x.length - 1) * (0.36 + 0.09 * place));
      return {
        x,
        y,
        label: name,
        ink: filterInks[name],
        nameAt: x[at] ?? 0,
        side: 'below' as const,
      };
    }),
    x: {
      from: Math.floor(2 * Math.min(...ends)) / 2,
      to: Math.ceil(2 * Math.max(...ends)) / 2,
      name: `kHz from ${format(fs, 'Hz', 7)}`,
      unit: 'kHz',
      step: 0.02,
    },
    y: { from: 0, to: Math.ceil(most * 2.2) / 2, name: 'ms', unit: 'ms', decimals: 2 },
    tall: 14,
  };
}
