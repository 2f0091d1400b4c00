import { memo } from 'react';
import { Chart, type ChartText } from './Chart.tsx';
import { Flat } from './Flat.tsx';
import { Hatch } from './Hatch.tsx';
import { Plot } from './Plot.tsx';
import { ticks } from './ticks.ts';
import type { Measured } from './useMeasured.ts';
import { useScales } from './useScales.ts';

/** One of several things to choose from. */
export interface ChoiceDot {
  key: string;
  /** Whole: what it costs. */
  x: number;
  /** What it is worth. */
  y: number;
  /** `plain` a ring: not good enough; `placed` filled, with its number if it has one; `marked` a lozenge: the best. */
  kind: 'plain' | 'placed' | 'marked';
  text?: string;
}

export interface ChoiceChartProps extends ChartText {
  dots: readonly ChoiceDot[];
  x: { from: number; to: number; name: string };
  y: { from: number; to: number; name: string };
  /** What it has to be worth, at least. */
  least: { at: number; label: string };
}

/** The best first, so that it stands on its own column. */
const rank = { marked: 0, placed: 1, plain: 2 } as const;

/** Dots of one column that would cover one another are set side by side. */
function spread(dots: readonly ChoiceDot[], near: number): (ChoiceDot & { aside: number })[] {
  const set: (ChoiceDot & { aside: number })[] = [];
  for (const dot of [...dots].sort((a, b) => rank[a.kind] - rank[b.kind] || b.y - a.y)) {
    const covers = (aside: number) =>
      set.some((one) => one.x === dot.x && one.aside === aside && Math.abs(one.y - dot.y) < near);
    const aside = [0, 1, -1, 2].find((one) => !covers(one)) ?? 0;
    set.push({ ...dot, aside });
  }
  // The best is drawn last, over all others.
  return set.reverse();
}

function Dots({ dots, em }: { dots: readonly ChoiceDot[]; em: number }) {
  const s = useScales();
  if (s === null) return null;
  const near = (1.15 * em) / Math.max(1e-9, Math.abs(s.beyondY(1) - s.beyondY(0)));
  const drawn = spread(dots, near);
  return (
    <g>
      {drawn.map(({ key, x, y, kind, text, aside }) => {
        const [cx, cy] = [s.x(x) + aside * em * 1.15, s.y(y)];
        const r = (text === undefined ? 0.3 : 0.52) * em;
        return (
          <g key={key} className={`chart__dot chart__dot--${kind}`}>
            {kind === 'marked' ? (
              <path
                d={`M${cx} ${cy - 1.3 * r}l${1.3 * r} ${1.3 * r}l${-1.3 * r} ${1.3 * r}l${-1.3 * r} ${-1.3 * r}z`}
              />
            ) : (
              <circle cx={cx} cy={cy} r={r} />
            )}
            {text !== undefined && (
              <text x={cx} y={cy + 0.27 * em} textAnchor="middle">
                {text}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

/** The ground where nothing is good enough. */
function TooLittle({ under }: { under: number }) {
  const s = useScales();
  if (s === null) return null;
  const y = s.y(under);
  return (
    <path className="chart__unwanted" d={`M${s.left} ${y}H${s.right}V${s.bottom}H${s.left}Z`} />
  );
}

function Picture({ width, em, ...props }: ChoiceChartProps & Measured) {
  const { dots, x, y, least } = props;
  const whole = Array.from(
    { length: Math.floor(x.to) - Math.ceil(x.from) + 1 },
    (_, i) => Math.ceil(x.from) + i,
  );
  const every = Math.ceil((whole.length * 2) / (width / em - 4));
  return (
    <Plot
      width={width}
      em={em}
      tall={20}
      x={{ ...x, ticks: whole.filter((_, i) => i % every === 0) }}
      y={{ ...y, ticks: ticks(y.from, y.to, 6) }}
    >
      <Hatch />
      <TooLittle under={least.at} />
      <Flat at={least.at} label={least.label} end="left" side="above" em={em} />
      <Dots dots={dots} em={em} />
    </Plot>
  );
}

/** What each of several things costs and what it is worth; the best of those that are good enough. */
export const ChoiceChart = memo(function ChoiceChart(props: ChoiceChartProps) {
  return (
    <Chart title={props.title} summary={props.summary} table={props.table}>
      {(place) => <Picture {...props} {...place} />}
    </Chart>
  );
});
