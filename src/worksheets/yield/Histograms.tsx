import { memo, useMemo } from 'react';
import { HistogramChart, type HistogramChartProps } from '../../design/chart/HistogramChart.tsx';
import type { FigureName } from '../../engine/errands/yield/buildFigures.ts';
import { criteria } from '../../engine/errands/yield/mask.ts';
import type { FigureSpread, YieldAnswer } from '../../engine/errands/yield/yieldAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { useInTurn } from '../bound/useInTurn.ts';
import { figureWords } from './figureWords.ts';

/** How each figure comes out over all builds, one picture after the other. */
export const Histograms = memo(function Histograms({
  answer,
  turn,
}: {
  answer: YieldAnswer;
  turn: number;
}) {
  return (
    <div className="charts">
      {answer.figures.map(({ name }, place) => (
        <Spread key={name} name={name} answer={answer} turn={turn + place} />
      ))}
    </div>
  );
});

function Spread({ name, turn, ...rest }: { name: FigureName; answer: YieldAnswer; turn: number }) {
  const answer = useInTurn(rest.answer, turn);
  const chart = useMemo(() => {
    const figure = answer?.figures.find((one) => one.name === name);
    return answer && figure ? picture(figure, answer) : null;
  }, [answer, name]);
  return chart && <HistogramChart {...chart} />;
}

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
