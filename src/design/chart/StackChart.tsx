import { memo } from 'react';
import { Chart, type ChartText } from './Chart.tsx';
import type { Measured } from './useMeasured.ts';

/** A bar made of parts. */
export interface Stacked {
  key: string;
  label: string;
  /** The whole, ready to read. */
  figure: string;
  /** Parts from the left, in the order of `parts`; one unit for all bars. */
  values: readonly number[];
}

export interface StackChartProps extends ChartText {
  /** Names of the parts, the same in every bar: six at most. */
  parts: readonly string[];
  bars: readonly Stacked[];
}

/** Width of a letter, in em: enough to keep words apart. */
const LETTER = 0.5;
const HIGH = 1.5;
const KEY_LINE = 1.7;

/** The grounds that parts have besides plain ones. */
function Grounds() {
  return (
    <defs>
      <pattern
        id="stack-slant"
        width="5"
        height="5"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <rect className="stack__wash" width="5" height="5" />
        <path className="stack__slant" d="M1 0v5" />
      </pattern>
      <pattern id="stack-upright" width="5" height="5" patternUnits="userSpaceOnUse">
        <rect className="stack__tint" width="5" height="5" />
        <path className="stack__upright" d="M1 0v5" />
      </pattern>
    </defs>
  );
}

/** Where each word of the key stands, in em: line by line. */
function keyPlaces(parts: readonly string[], width: number) {
  let [x, line] = [0, 0];
  const places = parts.map((part) => {
    const long = 2 + part.length * LETTER;
    if (x > 0 && x + long > width) [x, line] = [0, line + 1];
    const place = { part, x, line };
    x += long + 1.2;
    return place;
  });
  return { places, lines: line + 1 };
}

function Picture({ parts, bars, width, em }: StackChartProps & Measured) {
  const wide = width / em;
  const names = LETTER * Math.max(...bars.map(({ label }) => label.length)) + 1;
  const figures = LETTER * Math.max(...bars.map(({ figure }) => figure.length)) + 1.2;
  const beside = wide > names + figures + 16;
  const left = beside ? names : 0;
  const step = beside ? HIGH + 1 : HIGH + 2.3;
  const most = Math.max(...bars.map((bar) => sum(bar.values)), 1e-30);
  const scale = Math.max(1, wide - left - figures) / most;
  const { places, lines } = keyPlaces(parts, wide);
  const foot = bars.length * step + 0.6;
  const tall = foot + lines * KEY_LINE;
  return (
    <svg className="stack" width={width} height={tall * em} aria-hidden="true">
      <Grounds />
      {bars.map(({ key, label, figure, values }, i) => {
        const top = i * step + (beside ? 0.4 : 1.5);
        const middle = top + HIGH / 2 + 0.33;
        let at = left;
        return (
          <g key={key}>
            <text x={0} y={(beside ? middle : top - 0.4) * em}>
              {label}
            </text>
            {values.map((value, part) => {
              const x = at;
              at += value * scale;
              return value > 0 ? (
                <rect
                  key={parts[part]}
                  className={`stack__part stack__part--${part}`}
                  x={x * em}
                  y={top * em}
                  width={value * scale * em}
                  height={HIGH * em}
                />
              ) : null;
            })}
            <text className="chart__strong" x={(at + 0.6) * em} y={middle * em}>
              {figure}
            </text>
          </g>
        );
      })}
      {places.map(({ part, x, line }, i) => (
        <g key={part}>
          <rect
            className={`stack__part stack__part--${i}`}
            x={x * em}
            y={(foot + line * KEY_LINE + 0.35) * em}
            width={1.2 * em}
            height={0.8 * em}
          />
          <text className="chart__soft" x={(x + 1.6) * em} y={(foot + line * KEY_LINE + 1.08) * em}>
            {part}
          </text>
        </g>
      ))}
    </svg>
  );
}

const sum = (values: readonly number[]) => values.reduce((all, one) => all + one, 0);

/** Bars of parts laid end to end, all to one scale, the whole beside each. */
export const StackChart = memo(function StackChart(props: StackChartProps) {
  return (
    <Chart title={props.title} summary={props.summary} table={props.table}>
      {(place) => <Picture {...props} {...place} />}
    </Chart>
  );
});
