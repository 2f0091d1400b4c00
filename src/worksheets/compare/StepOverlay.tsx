import { memo, useDeferredValue, useMemo } from 'react';
import { CurveChart, type CurveChartProps } from '../../design/chart/CurveChart.tsx';
import type { CompareAnswer } from '../../engine/errands/compare/compareAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { filterInks, foundIn } from './filterInks.ts';

/** A tone that is switched on, as it comes out of each filter. */
export const StepOverlay = memo(function StepOverlay({ answer }: { answer: CompareAnswer }) {
  const picture = useDeferredValue(useMemo(() => drawn(answer), [answer]));
  return picture && <CurveChart {...picture} />;
});

function drawn(answer: CompareAnswer): CurveChartProps | null {
  const filters = foundIn(answer);
  if (filters.length === 0) return null;
  const settled = Math.max(...filters.map(({ found }) => found.figures.settled));
  const last = Math.max(1, Math.ceil(1250 * settled));
  const highest = Math.max(...filters.map(({ found }) => 1 + found.figures.overshoot));
  return {
    title: 'A tone switched on',
    summary: `${filters
      .map(
        ({ name, found: { figures } }) =>
          `${name} rises in ${format(figures.rise, 's', 3)} and overshoots by ${format(figures.overshoot, '%', 2)}`,
      )
      .join('; ')}.`,
    curves: filters.map(({ name, found: { step } }, place) => {
      const x = step.time.map((t) => 1000 * t);
      const height = 0.25 + 0.18 * place;
      const i = step.level.findIndex((level) => level >= height);
      return {
        x,
        y: step.level,
        label: name,
        ink: filterInks[name],
        nameAt: x[Math.max(0, i)] ?? 0,
        side: 'right' as const,
      };
    }),
    x: { from: 0, to: last, name: 'ms', unit: 'ms', step: 0.02 },
    y: {
      from: 0,
      to: Math.ceil(10 * highest + 0.5) / 10,
      name: 'of the steady tone',
      unit: '',
      decimals: 2,
    },
    tall: 16,
  };
}
