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
  /** Another answer to the same question, dBc, outlined in dashes beside. */
  beside?: number | null;
}

interface HarmonicChartProps extends ChartText {
  harmonics: readonly Harmonic[];
  /** `MHz` */
  frequencyUnit: string;
  /** `US 97.307(d): −43 dBc` */
  limitLabel: string;
  /** dBc at the lower edge, below which no figure is given; by itself 10 dB under the lowest. */
  floor?: number;
  /** What each of the two answers is, where there are two. */
  answers?: readonly [level: string, beside: string];
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
        const beside = h.beside ?? null;
        const y = s.y(h.level);
        // Clear of the other answer where this one has no height of its own.
        const clear = h.level < floor && beside !== null && beside > floor && under !== '↓';
        // Two answers stand side by side.
        const x = s.x(h.order) + (beside === null ? 0 : wide * 0.35);
        // A figure that would stand on the limit's line goes inside the stem.
        const above = y - s.y(h.limit ?? Number.POSITIVE_INFINITY);
        const inside = h.limit !== null && above > 0 && above < em * 1.5;
        return (
          <g key={h.order}>
            {beside !== null && beside > floor && (
              <path
                className="chart__stem chart__stem--beside"
                d={`M${x - wide * 0.5} ${s.bottom}H${x - wide * 1.2}V${s.y(beside)}H${x - wide * 0.5}`}
              />
            )}
            <rect
              className={`chart__stem chart__stem--${h.outcome}`}
              x={x - wide / 2}
              y={y}
              width={wide}
              height={Math.max(0, s.bottom - y)}
            />
            <text
              className={inside ? 'chart__strong' : 'chart__halo chart__strong'}
              x={clear ? s.x(h.order) - wide * 0.3 : x}
              y={inside ? y + em * 1.2 : y - em * 0.4}
              textAnchor={clear ? 'start' : 'middle'}
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

/** A level in figures, nothing finer than the floor. */
const said = (level: number, floor = Number.NEGATIVE_INFINITY) =>
  level < floor ? `< ${plain(floor)}` : plain(Number(level.toFixed(1)));

/** Each harmonic's level, and the limit as ground that none may enter. */
export const HarmonicChart = memo(function HarmonicChart(props: HarmonicChartProps) {
  const table = props.table ?? {
    columns: [
      { key: 'order', label: words.chart.harmonic },
      { key: 'frequency', label: words.chart.frequency, unit: props.frequencyUnit },
      { key: 'level', label: props.answers?.[0] ?? words.chart.level, unit: 'dBc' },
      ...(props.answers ? [{ key: 'beside', label: props.answers[1], unit: 'dBc' }] : []),
      { key: 'limit', label: words.chart.limit, unit: 'dBc' },
      { key: 'outcome', label: words.chart.verdict, as: 'words' as const },
    ],
    rows: props.harmonics.map((h) => ({
      key: String(h.order),
      cells: {
        order: `${h.order}f`,
        frequency: h.frequency,
        level: said(h.level, props.floor),
        beside: h.beside === undefined || h.beside === null ? '–' : said(h.beside, props.floor),
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
