import { memo, useDeferredValue, useMemo } from 'react';
import { CurveChart, type CurveChartProps } from '../../design/chart/CurveChart.tsx';
import type { CompareAnswer } from '../../engine/errands/compare/compareAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { useValue } from '../../store/hooks.ts';
import { type FoundFilter, filterInks, foundIn } from './filterInks.ts';

/** How far down the picture goes, dB. */
const FLOOR = -90;

/** The responses over each other, whole and magnified. */
export const ResponseOverlay = memo(function ResponseOverlay({
  answer,
}: {
  answer: CompareAnswer;
}) {
  const fs = useValue<number>('quartz.fs');
  const drawn = useMemo(() => (fs === null ? null : pictures(answer, fs)), [answer, fs]);
  const picture = useDeferredValue(drawn);
  return picture && <Pictures {...picture} />;
});

interface Both {
  readonly whole: CurveChartProps;
  readonly strip: CurveChartProps;
}

const Pictures = memo(function Pictures({ whole, strip }: Both) {
  return (
    <>
      <CurveChart {...whole} />
      <CurveChart {...strip} />
    </>
  );
});

function pictures(answer: CompareAnswer, fs: number): Both | null {
  const filters = foundIn(answer);
  if (filters.length === 0) return null;
  const kHz = (f: number) => (f - fs) / 1000;
  const curves = filters.map(({ name, found: { response } }) => ({
    name,
    x: response.frequency.map(kHz),
    y: response.gain,
  }));
  const within = (level: number) => {
    const places = curves.flatMap(({ x, y }) => [...x].filter((_, i) => (y[i] ?? -999) > level));
    return [Math.min(...places), Math.max(...places)] as const;
  };
  const [first, last] = within(-75);
  const [low, high] = within(-6);
  const margin = (high - low) / 6;
  const name = `kHz from ${format(fs, 'Hz', 7)}`;
  const summary = filters.map(said).join('; ');
  const named = (level: (place: number) => number) =>
    curves.map(({ name: letter, x, y }, place) => ({
      x,
      y,
      label: letter,
      ink: filterInks[letter],
      // The first two are named on their upper skirt, the others on their lower one.
      nameAt: skirt(x, y, level(place), place < 2),
      side: place < 2 ? ('right' as const) : ('left' as const),
    }));
  return {
    whole: {
      title: 'Responses',
      summary: `${summary}.`,
      curves: named((place) => -18 - 16 * place),
      x: {
        from: halves(first, Math.floor),
        to: halves(last, Math.ceil),
        name,
        unit: 'kHz',
        step: 0.02,
      },
      y: { from: FLOOR, to: 0, name: 'dB', unit: 'dB' },
      tall: 22,
    },
    strip: {
      title: 'The passbands, magnified',
      summary: 'Each against its own best point.',
      curves: named((place) => -1.6 - 1.1 * place),
      x: { from: low - margin, to: high + margin, name, unit: 'kHz', step: 0.01 },
      y: { from: -6, to: 0, name: 'dB', unit: 'dB' },
      tall: 13,
    },
  };
}

const said = ({ name, found: { figures } }: FoundFilter) =>
  `${name}: ${format(figures.width3 ?? 0, 'Hz', 4)} wide, ${format(figures.loss ?? 0, 'dB', 3)} of loss`;

/** The outermost place, above or below, at which a response is still over a level. */
function skirt(x: Float64Array, y: Float64Array, level: number, upper: boolean): number {
  const over = (one: number) => one > level;
  return x[upper ? y.findLastIndex(over) : y.findIndex(over)] ?? x[0] ?? 0;
}

/** Whole half kilohertz, so that the frame stands still. */
const halves = (value: number, round: (x: number) => number) => round(2 * value) / 2;
