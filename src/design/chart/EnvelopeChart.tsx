import { memo, useMemo } from 'react';
import { words } from '../words.ts';
import { Chart, type ChartText } from './Chart.tsx';
import { EnvelopeBands } from './EnvelopeBands.tsx';
import { type Curve, Plot } from './Plot.tsx';
import { Reader } from './Reader.tsx';
import { heightAt } from './thinned.ts';
import { plain, ticks } from './ticks.ts';
import { Upright } from './Upright.tsx';
import type { Measured } from './useMeasured.ts';

export interface EnvelopeChartProps extends ChartText {
  /** kHz from the reference frequency, rising. */
  x: ArrayLike<number>;
  /** dB that a twentieth, a quarter, half, three quarters and nineteen twentieths stay below. */
  lines: readonly [
    ArrayLike<number>,
    ArrayLike<number>,
    ArrayLike<number>,
    ArrayLike<number>,
    ArrayLike<number>,
  ];
  /** The response with nothing off. */
  wanted: ArrayLike<number>;
  xName: string;
  domain: readonly [number, number];
  floor: number;
  ceiling?: number;
  tall?: number;
  uprights?: readonly { at: number; label: string; kind: 'live' | 'rule' }[];
}

function Picture({ width, em, ...props }: EnvelopeChartProps & Measured) {
  const { x, lines, wanted, domain, floor, ceiling = 0, tall = 20, uprights = [] } = props;
  const [from, to] = domain;
  const [low, lowMiddle, middle, highMiddle, high] = lines;
  const curves = useMemo<Curve[]>(
    () => [
      { x, y: wanted, key: 'wanted', ink: 'reference' },
      { x, y: middle, key: 'middle', ink: 'main' },
    ],
    [x, wanted, middle],
  );
  const at = (of: ArrayLike<number>, place: number) => heightAt({ x, y: of }, place);
  const says = (place: number) => {
    const [a, b, c] = [low, middle, high].map((of) => at(of, place));
    const written = (value: number | null | undefined) =>
      value === null || value === undefined ? '–' : plain(Number(value.toFixed(1)));
    return `${plain(Number(place.toFixed(2)))} kHz: ${written(b)} dB, ${words.chart.mostly} ${written(a)} … ${written(c)}`;
  };
  return (
    <Plot
      width={width}
      em={em}
      tall={tall}
      x={{
        from,
        to,
        ticks: ticks(from, to, Math.min(12, width / em / 4.5)),
        name: props.xName,
      }}
      y={{ from: floor, to: ceiling, ticks: ticks(floor, ceiling, tall / 3), name: 'dB' }}
      curves={curves}
      under={
        <EnvelopeBands
          x={x}
          of={[
            [low, high],
            [lowMiddle, highMiddle],
          ]}
          from={from}
          to={to}
        />
      }
    >
      {uprights.map((upright, line) => (
        <Upright key={upright.label} em={em} line={line} {...upright} />
      ))}
      <Reader
        from={from}
        to={to}
        step={(to - from) / 200}
        start={(from + to) / 2}
        label={words.chart.read}
        heightAt={(place) => at(middle, place)}
        says={says}
        em={em}
      />
    </Plot>
  );
}

/** The response of many builds: the middle one, and between which lines most of them lie. */
export const EnvelopeChart = memo(function EnvelopeChart(props: EnvelopeChartProps) {
  return (
    <Chart title={props.title} summary={props.summary} table={props.table}>
      {(place) => (
        <>
          <Picture {...props} {...place} />
          <EnvelopeKey />
        </>
      )}
    </Chart>
  );
});

/** What the areas and lines mean, in words beside a piece of each. */
function EnvelopeKey() {
  return (
    <ul className="chart__key">
      <li data-piece="middle">{words.chart.middleBuild}</li>
      <li data-piece="inner">{words.chart.half}</li>
      <li data-piece="outer">{words.chart.nineTenths}</li>
      <li data-piece="wanted">{words.chart.nothingOff}</li>
    </ul>
  );
}
