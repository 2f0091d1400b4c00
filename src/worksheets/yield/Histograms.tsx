import { memo, useDeferredValue, useMemo } from 'react';
import { HistogramChart, type HistogramChartProps } from '../../design/chart/HistogramChart.tsx';
import { criteria } from '../../engine/errands/yield/mask.ts';
import type { FigureSpread, YieldAnswer } from '../../engine/errands/yield/yieldAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { figureWords } from './figureWords.ts';

/** How each figure comes out over all builds. */
export const Histograms = memo(function Histograms({ answer }: { answer: YieldAnswer }) {
  const drawn = useMemo(
    () => answer.figures.map((figure) => ({ ...picture(figure, answer), key: figure.name })),
    [answer],
  );
  const charts = useDeferredValue(drawn);
  return <Pictures charts={charts} />;
});

const Pictures = memo(function Pictures({
  charts,
}: {
  charts: readonly (HistogramChartProps & { key: string })[];
}) {
  return (
    <div className="charts">
      {charts.map(({ key, ...chart }) => (
        <HistogramChart key={key} {...chart} />
      ))}
    </div>
  );
});

function picture(figure: FigureSpread, { mask, builds }: YieldAnswer): HistogramChartProps {
  const { label, unit, digits } = figureWords[figure.name];
  const written = (value: number) => format(value, unit, digits);
  const limit = (side: 'least' | 'most') => {
    const found = criteria.find((one) => one.figure === figure.name && one.side === side);
    const at = found ? mask[found.name] : null;
    return at === null
      ? undefined
      : { at, label: `${side === 'least' ? 'least' : 'most'} ${written(at)}` };
  };
  return {
    title: label,
    summary: `Nine of ten: ${written(figure.low)} to ${written(figure.high)}; half have more than ${written(figure.middle)}.`,
    ...figure.histogram,
    total: builds,
    xName: unit,
    unit,
    least: limit('least'),
    most: limit('most'),
    wanted: { at: figure.wanted, label: `designed ${written(figure.wanted)}` },
  };
}
