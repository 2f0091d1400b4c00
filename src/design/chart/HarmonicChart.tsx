import { memo } from 'react';
import type { Outcome } from '../marks.ts';
import { words } from '../words.ts';
import { Chart, type ChartText } from './Chart.tsx';
import { Plot } from './Plot.tsx';
import { plain, ticks } from './ticks.ts';
import type { Measured } from './useMeasured.ts';
import { useScales } from './useScales.ts';

export interface Harmonic {
  order: number;
  /** `14.3`: in the unit that the chart's axis is named with. */
  frequency: string;
  /** dBc, negative. */
  level: number;
  limit: number | null;
  outcome: Outcome;
}

interface HarmonicChartProps extends ChartText {
  harmonics: readonly Harmonic[];
  /** `MHz` */
  frequencyUnit: string;
  /** `US 97.307(d): −43 dBc` */
  limitLabel: string;
  /** dBc at the lower edge, below which no figure is given; by itself 10 dB under the lowest. */
  floor?: number;
}

/** The forbidden ground above the limit: hatched, with the limit as its lower edge. */
function Limit({ of, label, em }: { of: readonly Harmonic[]; label: string; em: number }) {
  const s = useScales();
  if (s === null) return null;
  const steps = of.filter((h) => h.limit !== null);
  if (steps.length === 0) return null;
  const edge = steps
    .map(
      (h) =>
        `${s.x(h.order - 0.5)} ${s.y(h.limit ?? 0)}L${s.x(h.order + 0.5)} ${s.y(h.limit ?? 0)}`,
    )
    .join('L');
  const [first, last] = [steps[0], steps[steps.length - 1]];
  const [a, b] = [s.x((first?.order ?? 2) - 0.5), s.x((last?.order ?? 2) + 0.5)];
  return (
    <g>
      <path className="chart__unwanted" d={`M${a} ${s.top}L${edge}L${b} ${s.top}Z`} />
      <path className="chart__limit" d={`M${edge}`} />
      <text className="chart__halo" x={b - em * 0.5} y={s.top + em * 1.4} textAnchor="end">
        {label}
      </text>
    </g>
  );
}

function Stems({ of, floor, em }: { of: readonly Harmonic[]; floor: number; em: number }) {
  const s = useScales();
  if (s === null) return null;
  const room = (s.right - s.left) / Math.max(1, of.length);
  // A short arrow where the figure would run into its neighbour.
  const under = room > em * 3.6 ? `< ${plain(floor)}` : '↓';
  const wide = Math.min(em * 2, room * 0.5);
  return (
    <g>
      {of.map((h) => {
        const [x, y] = [s.x(h.order), s.y(h.level)];
        // A figure that would stand on the limit's line goes inside the stem.
        const above = y - s.y(h.limit ?? Number.POSITIVE_INFINITY);
        const inside = h.limit !== null && above > 0 && above < em * 1.5;
        return (
          <g key={h.order}>
            <rect
              className={`chart__stem chart__stem--${h.outcome}`}
              x={x - wide / 2}
              y={y}
              width={wide}
              height={Math.max(0, s.bottom - y)}
            />
            <text
              className={inside ? 'chart__strong' : 'chart__halo chart__strong'}
              x={x}
              y={inside ? y + em * 1.2 : y - em * 0.4}
              textAnchor="middle"
            >
              {h.level < floor ? under : plain(Math.round(h.level))}
            </text>
          </g>
        );
      })}
    </g>
  );
}

function Picture({ width, em, ...props }: HarmonicChartProps & Measured) {
  const { harmonics, frequencyUnit, limitLabel } = props;
  const lowest = Math.min(-60, ...harmonics.map((h) => h.level));
  const floor = props.floor ?? Math.floor((lowest - 8) / 10) * 10;
  const orders = harmonics.map((h) => h.order);
  const frequency = new Map(harmonics.map((h) => [h.order, h.frequency]));
  return (
    <Plot
      width={width}
      em={em}
      tall={19}
      x={{
        from: Math.min(...orders) - 0.5,
        to: Math.max(...orders) + 0.5,
        ticks: orders,
        named: true,
        format: (order) => `${order}f`,
        under: (order) => frequency.get(order) ?? '',
      }}
      y={{ from: floor, to: 0, ticks: ticks(floor, 0, 5), name: `dBc  (${frequencyUnit})` }}
    >
      <Limit of={harmonics} label={limitLabel} em={em} />
      <Stems of={harmonics} floor={floor} em={em} />
    </Plot>
  );
}

/** Each harmonic's level, and the limit as ground that none may enter. */
export const HarmonicChart = memo(function HarmonicChart(props: HarmonicChartProps) {
  const table = props.table ?? {
    columns: [
      { key: 'order', label: words.chart.harmonic },
      { key: 'frequency', label: words.chart.frequency, unit: props.frequencyUnit },
      { key: 'level', label: words.chart.level, unit: 'dBc' },
      { key: 'limit', label: words.chart.limit, unit: 'dBc' },
      { key: 'outcome', label: words.chart.verdict, as: 'words' as const },
    ],
    rows: props.harmonics.map((h) => ({
      key: String(h.order),
      cells: {
        order: `${h.order}f`,
        frequency: h.frequency,
        level: plain(Number(h.level.toFixed(1))),
        limit: h.limit === null ? '–' : plain(Number(h.limit.toFixed(1))),
        outcome: words.outcome[h.outcome],
      },
    })),
  };
  return (
    <Chart title={props.title} summary={props.summary} table={table}>
      {(place) => <Picture {...props} {...place} />}
    </Chart>
  );
});
