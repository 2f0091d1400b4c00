import { memo } from 'react';
import { Chart, type ChartText } from './Chart.tsx';
import { Plot } from './Plot.tsx';
import { plain, ticks } from './ticks.ts';
import type { Measured } from './useMeasured.ts';
import { useScales } from './useScales.ts';

export interface BandBar {
  /** Under the axis: `1.25k`. */
  name: string;
  /** What the whole band is worth, and how much of that is there, in the axis’s unit. */
  whole: number;
  part: number;
}

export interface BandsChartProps extends ChartText {
  bands: readonly BandBar[];
  xName: string;
  yName: string;
  /** What outline and filling stand for. */
  whole: string;
  part: string;
}

function Bars({ of }: { of: readonly BandBar[] }) {
  const s = useScales();
  if (s === null) return null;
  return of.map(({ name, whole, part }, i) => {
    const left = s.x(i + 0.12);
    const width = s.x(i + 0.88) - left;
    const bar = (height: number) => ({
      x: left,
      width,
      y: s.y(height),
      height: s.bottom - s.y(height),
    });
    return (
      <g key={name}>
        <rect className="bands__part" {...bar(part)} />
        <rect className="bands__whole" {...bar(whole)} />
      </g>
    );
  });
}

function Key({ of, says }: { of: 'part' | 'whole'; says: string }) {
  return (
    <span>
      <svg viewBox="0 0 28 16" aria-hidden="true">
        <rect className={`bands__${of}`} x="1" y="2" width="26" height="12" />
      </svg>
      {says}
    </span>
  );
}

function Picture({ width, em, of }: Measured & { of: BandsChartProps }) {
  const { bands, xName, yName } = of;
  const most = Math.max(...bands.map(({ whole }) => whole));
  const every = width / em < 34 ? 3 : width / em < 52 ? 2 : 1;
  const places = bands.map((_, i) => i + 0.5).filter((_, i) => i % every === 0);
  return (
    <>
      <Plot
        width={width}
        em={em}
        tall={15}
        x={{
          from: 0,
          to: bands.length,
          ticks: places,
          name: xName,
          named: true,
          format: (at) => bands[Math.floor(at)]?.name ?? '',
        }}
        y={{ from: 0, to: most * 1.15, ticks: ticks(0, most, 5), name: yName, format: plain }}
      >
        <Bars of={bands} />
      </Plot>
      <p className="map__legend">
        <Key of="part" says={of.part} />
        <Key of="whole" says={of.whole} />
      </p>
    </>
  );
}

/** Bands side by side: what each is worth as an outline, and what is there of it as its filling. */
export const BandsChart = memo(function BandsChart(props: BandsChartProps) {
  return (
    <Chart title={props.title} summary={props.summary} table={props.table}>
      {(place) => <Picture of={props} {...place} />}
    </Chart>
  );
});
