import { memo, useMemo } from 'react';
import { words } from '../words.ts';
import { Band } from './Band.tsx';
import { CarrierMarks } from './CarrierMarks.tsx';
import { Chart, type ChartText } from './Chart.tsx';
import { CurveName } from './CurveName.tsx';
import { Floor, type FloorProps } from './Floor.tsx';
import { type Curve, Plot } from './Plot.tsx';
import { Reader } from './Reader.tsx';
import type { PlotAxis } from './scale.ts';
import { heightAt, type XY } from './thinned.ts';
import { plain, ticks } from './ticks.ts';
import type { Measured } from './useMeasured.ts';
import { type Width, Widths } from './Widths.tsx';

export interface ResponseChartProps extends ChartText {
  /** kHz from the reference frequency, rising, against dB. */
  curve: XY;
  /** Named at its own place: an ideal, a frozen or a measured curve, dashed. */
  reference?: (XY & { label: string }) | undefined;
  /** Says what the offsets count from: `kHz from 7.1590 MHz`. */
  xName: string;
  /** Ends of the picture, kHz; the curve's own by itself. */
  domain?: readonly [number, number] | undefined;
  /** dB at the lower and upper edge. */
  floor?: number;
  ceiling?: number;
  wanted?: { from: number; to: number; label?: string } | undefined;
  opposite?: { from: number; to: number; label?: string } | undefined;
  /** kHz; `direction` +1 where audio rises with frequency (USB), −1 where it falls (LSB). */
  carrier?: { at: number; label: string; direction: 1 | -1 } | undefined;
  /** Where a rule of thumb would put the carrier, with what it costs. */
  rules?: readonly { at: number; label: string }[];
  widths?: readonly Width[];
  /** What leaks past the filter, however well it is made. */
  leak?: FloorProps | undefined;
  /** Height in em. */
  tall?: number;
}

/** Audio tones along the top, away from the carrier in the direction of the wanted sideband. */
function audioAxis(
  carrier: { at: number; direction: 1 | -1 },
  from: number,
  to: number,
  across: number,
): PlotAxis {
  const reach = Math.abs((carrier.direction > 0 ? to : from) - carrier.at) * 1000;
  const tones = ticks(0, Math.min(reach, 5000), Math.min(6, across / 7)).filter((t) => t >= 0);
  const places = tones.map((tone) => carrier.at + (carrier.direction * tone) / 1000);
  // The name stands in the row of figures where that leaves room for it, else above them.
  const room = (7 * (to - from)) / across;
  const atEnd = places.every((place) => place < to - room);
  const atStart = places.every((place) => place > from + room);
  return {
    from,
    to,
    ticks: places,
    name: words.chart.audioHz,
    nameAt: atEnd ? 'end' : atStart ? 'start' : 'above',
    format: (at) => plain(Math.round((at - carrier.at) * carrier.direction * 1000)),
  };
}

function Picture({ width, em, ...props }: ResponseChartProps & Measured) {
  const { curve, reference, carrier, wanted, opposite, rules = [], widths = [], leak } = props;
  const { floor = -100, ceiling = 0, tall = 24 } = props;
  const from = props.domain?.[0] ?? curve.x[0] ?? 0;
  const to = props.domain?.[1] ?? curve.x[curve.x.length - 1] ?? 1;
  const across = width / em;

  const curves = useMemo<Curve[]>(
    () => [
      ...(reference ? [{ ...reference, key: 'reference', ink: 'reference' as const }] : []),
      { ...curve, key: 'main', ink: 'main' as const },
    ],
    [curve, reference],
  );
  const x: PlotAxis = {
    from,
    to,
    ticks: ticks(from, to, Math.min(12, across / 4.5)),
    name: props.xName,
  };
  const y: PlotAxis = {
    from: floor,
    to: ceiling,
    ticks: ticks(floor, ceiling, tall / 3),
    name: 'dB',
  };
  const top = carrier && audioAxis(carrier, from, to, across);
  const named = reference && nameAt(reference, from, to, floor);

  return (
    <Plot
      width={width}
      em={em}
      tall={tall}
      x={x}
      y={y}
      top={top}
      curves={curves}
      under={
        <>
          {opposite && <Band kind="unwanted" em={em} {...opposite} />}
          {wanted && <Band kind="wanted" em={em} {...wanted} />}
          {leak && <Floor {...leak} em={em} />}
        </>
      }
    >
      {carrier && <CarrierMarks carrier={carrier} rules={rules} em={em} />}
      <Widths of={widths} em={em} />
      {named && <CurveName {...named} em={em} side="right" />}
      <Reader
        from={from}
        to={to}
        step={0.01}
        start={((wanted?.from ?? from) + (wanted?.to ?? to)) / 2}
        label={words.chart.read}
        heightAt={(at) => heightAt(curve, at)}
        says={(at) => readOff(curve, at, carrier)}
        em={em}
      />
    </Plot>
  );
}

/** The reference is named on its way down the right-hand side, clear of the passband. */
function nameAt(curve: XY & { label: string }, from: number, to: number, floor: number) {
  for (let i = curve.x.length - 1; i >= 0; i--) {
    const [x = 0, y = 0] = [curve.x[i], curve.y[i]];
    if (x > from && x < to && y > floor * 0.5) return { x, y, label: curve.label };
  }
  return undefined;
}

function readOff(curve: XY, at: number, carrier?: { at: number; direction: 1 | -1 }) {
  const height = heightAt(curve, at);
  const level = height === null ? '–' : `${plain(Number(height.toFixed(1)))} dB`;
  const place = `${plain(Number(at.toFixed(2)))} kHz`;
  if (!carrier) return `${place}, ${level}`;
  const tone = Math.round((at - carrier.at) * carrier.direction * 1000);
  return `${place}, ${words.chart.audio} ${plain(tone)} Hz, ${level}`;
}

/** A filter's response against frequency, with the carrier and both sidebands where they fall. */
export const ResponseChart = memo(function ResponseChart(props: ResponseChartProps) {
  return (
    <Chart title={props.title} summary={props.summary} table={props.table}>
      {(place) => <Picture {...props} {...place} />}
    </Chart>
  );
});
