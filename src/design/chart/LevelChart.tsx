import { memo } from 'react';
import { words } from '../words.ts';
import { Chart, type ChartText } from './Chart.tsx';
import { Plot } from './Plot.tsx';
import type { PlotAxis } from './scale.ts';
import { plain, ticks } from './ticks.ts';
import type { Measured } from './useMeasured.ts';
import { useScales } from './useScales.ts';

export interface Level {
  key: string;
  /** One or two short words. */
  label: string;
  /** dBm */
  level: number;
  /** dBm where this place begins to compress, if it is known. */
  ceiling?: number | undefined;
}

interface LevelChartProps extends ChartText {
  levels: readonly Level[];
}

const dBm = (value: number) => plain(Math.round(value));
const room = (value: number) => (value < -0.5 ? dBm(value) : `+${dBm(Math.abs(value))}`);

/** The chain from left to right, or down the page where that is narrow. */
function Chain({ of, em, down }: { of: readonly Level[]; em: number; down: boolean }) {
  const s = useScales();
  if (s === null) return null;
  const at = (place: number, level: number) =>
    down ? ([s.x(level), s.y(place)] as const) : ([s.x(place), s.y(level)] as const);
  const line = of.map((one, i) => at(i, one.level).join(' ')).join('L');
  return (
    <g>
      <path className="chart__chain" d={`M${line}`} />
      {of.map((one, i) => {
        const [x, y] = at(i, one.level);
        const cap = one.ceiling === undefined ? null : at(i, one.ceiling);
        const tight = one.ceiling !== undefined && one.ceiling - one.level < 3;
        return (
          <g key={one.key}>
            {cap && (
              <>
                <path className="chart__headroom" d={`M${x} ${y}L${cap[0]} ${cap[1]}`} />
                <path
                  className="chart__cap"
                  d={
                    down
                      ? `M${cap[0]} ${cap[1] - em * 0.6}v${em * 1.2}`
                      : `M${cap[0] - em * 0.8} ${cap[1]}h${em * 1.6}`
                  }
                />
                <text
                  className={tight ? 'chart__halo chart__strong' : 'chart__halo chart__soft'}
                  x={down ? cap[0] + em * 0.4 : cap[0]}
                  y={down ? cap[1] + em * 0.35 : cap[1] - em * 0.4}
                  textAnchor={down ? 'start' : 'middle'}
                >
                  {`${room((one.ceiling ?? 0) - one.level)} dB`}
                </text>
              </>
            )}
            <circle className="chart__dot" cx={x} cy={y} r={em * 0.24} />
            <text
              className="chart__halo chart__strong"
              x={down ? x - em * 0.5 : x}
              y={down ? y + em * 0.35 : y + em * 1.3}
              textAnchor={down ? 'end' : 'middle'}
            >
              {dBm(one.level)}
            </text>
          </g>
        );
      })}
    </g>
  );
}

function Picture({ width, em, levels }: LevelChartProps & Measured) {
  const down = width / em < levels.length * 4.6;
  const values = levels.flatMap((one) => [one.level, one.ceiling ?? one.level]);
  const low = Math.floor((Math.min(...values) - (down ? 16 : 6)) / 10) * 10;
  const high = Math.ceil((Math.max(...values) + 4) / 10) * 10;
  const words = (index: number) => levels[index]?.label.split(' ') ?? [];
  const along: PlotAxis = {
    from: down ? levels.length - 0.5 : -0.5,
    to: down ? -0.5 : levels.length - 0.5,
    ticks: levels.map((_, i) => i),
    named: true,
    format: (i) => (down ? words(i).join(' ') : (words(i)[0] ?? '')),
    ...(down ? {} : { under: (i: number) => words(i).slice(1).join(' ') }),
  };
  const dbm: PlotAxis = {
    from: low,
    to: high,
    ticks: ticks(low, high, down ? width / em / 5 : 6),
    name: 'dBm',
  };
  return (
    <Plot
      width={width}
      em={em}
      tall={down ? levels.length * 2.4 + 5 : 21}
      x={down ? dbm : along}
      y={down ? { ...along, from: levels.length - 0.5, to: -0.5 } : dbm}
      left={down ? 6.5 : 2.75}
      right={down ? 2.5 : 1.25}
    >
      <Chain of={levels} em={em} down={down} />
    </Plot>
  );
}

const tenths = (value: number) => value.toFixed(1).replace('-', '−');

/** The level at each place of the chain, and how much room there is above it. */
export const LevelChart = memo(function LevelChart(props: LevelChartProps) {
  const table = props.table ?? {
    columns: [
      { key: 'place', label: words.chart.place, as: 'words' as const },
      { key: 'level', label: words.chart.level, unit: 'dBm' },
      { key: 'room', label: words.chart.headroom, unit: 'dB' },
    ],
    rows: props.levels.map((one) => ({
      key: one.key,
      cells: {
        place: one.label,
        level: tenths(one.level),
        room: one.ceiling === undefined ? '–' : tenths(one.ceiling - one.level),
      },
    })),
  };
  return (
    <Chart title={props.title} summary={props.summary} table={table}>
      {(place) => <Picture {...props} {...place} />}
    </Chart>
  );
});
