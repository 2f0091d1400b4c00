import { memo } from 'react';
import { words } from '../words.ts';
import { Band } from './Band.tsx';
import { Chart, type ChartText } from './Chart.tsx';
import { Plot } from './Plot.tsx';
import { plain, ticks } from './ticks.ts';
import { Upright } from './Upright.tsx';
import type { Measured } from './useMeasured.ts';
import { useScales } from './useScales.ts';

export interface HistogramChartProps extends ChartText {
  /** Lower end of the first step, and how wide each is, in the unit of the axis. */
  from: number;
  step: number;
  counts: readonly number[];
  /** How many there are in all, those beyond the ends too. */
  total: number;
  /** Quantity and unit along the axis. */
  xName: string;
  unit: string;
  /** What is allowed; beyond it the picture is hatched. */
  least?: { at: number; label: string } | undefined;
  most?: { at: number; label: string } | undefined;
  /** Where it would be with nothing off. */
  wanted?: { at: number; label: string } | undefined;
  tall?: number;
}

function Columns({ from, step, counts, total, least, most, em }: HistogramChartProps & Measured) {
  const s = useScales();
  if (s === null) return null;
  const good = (middle: number) =>
    (least === undefined || middle >= least.at) && (most === undefined || middle <= most.at);
  return (
    <g>
      {counts.map((count, i) => {
        const low = from + i * step;
        const [a, b] = [s.x(low), s.x(low + step)];
        const y = s.y((100 * count) / total);
        if (count === 0) return null;
        return (
          <rect
            key={low}
            className={`chart__stem ${good(low + step / 2) ? '' : 'chart__stem--fails'}`}
            x={a + em * 0.03}
            y={y}
            width={Math.max(0.5, b - a - em * 0.06)}
            height={Math.max(0, s.bottom - y)}
          />
        );
      })}
    </g>
  );
}

function Picture({ width, em, ...props }: HistogramChartProps & Measured) {
  const { from, step, counts, total, xName, least, most, wanted, tall = 11 } = props;
  const to = from + counts.length * step;
  const marks = [least?.at, most?.at].flatMap((at) => (at === undefined ? [] : [at]));
  // A limit close by is worth seeing even where no build is near it.
  const room = (to - from) * 0.6;
  const low = Math.min(from, ...marks.filter((at) => at > from - room));
  const high = Math.max(to, ...marks.filter((at) => at < to + room));
  const margin = (high - low) * 0.03;
  const [first, last] = [low - margin, high + margin];
  const highest = Math.max(1, ...counts.map((count) => (100 * count) / total));
  const uprights = [
    ...(wanted ? [{ ...wanted, kind: 'live' as const, side: sideOf(wanted.at, first, last) }] : []),
    ...(least ? [{ ...least, kind: 'rule' as const, side: sideOf(least.at, first, last) }] : []),
    ...(most ? [{ ...most, kind: 'rule' as const, side: sideOf(most.at, first, last) }] : []),
  ].filter(({ at }) => at >= first && at <= last);
  return (
    <Plot
      width={width}
      em={em}
      tall={tall}
      left={2.5}
      x={{ from: first, to: last, ticks: ticks(first, last, width / em / 5), name: xName }}
      y={{
        from: 0,
        to: highest * 1.6,
        ticks: ticks(0, highest * 1.1, 3),
        name: words.chart.perCent,
      }}
      under={
        <>
          {least && <Band kind="unwanted" from={first} to={Math.max(first, least.at)} em={em} />}
          {most && <Band kind="unwanted" from={Math.min(last, most.at)} to={last} em={em} />}
        </>
      }
    >
      <Columns {...props} width={width} em={em} />
      {uprights.map((upright, line) => (
        <Upright key={upright.label} em={em} line={line} {...upright} />
      ))}
    </Plot>
  );
}

const sideOf = (at: number, from: number, to: number) =>
  at > (from + to) / 2 ? ('left' as const) : ('right' as const);

/** How often a figure comes out how, with what is allowed marked on it. */
export const HistogramChart = memo(function HistogramChart(props: HistogramChartProps) {
  const table = props.table ?? {
    columns: [
      { key: 'from', label: words.chart.from, unit: props.unit },
      { key: 'to', label: words.chart.to, unit: props.unit },
      { key: 'count', label: words.chart.builds },
    ],
    rows: props.counts.map((count, i) => ({
      key: String(i),
      cells: {
        from: plain(props.from + i * props.step),
        to: plain(props.from + (i + 1) * props.step),
        count,
      },
    })),
  };
  return (
    <Chart title={props.title} summary={props.summary} table={table}>
      {(place) => <Picture {...props} {...place} />}
    </Chart>
  );
});
