import { useDeferredValue, useMemo } from 'react';
import type { CurveChartProps } from '../../design/chart/CurveChart.tsx';
import { DistanceChart } from '../../design/chart/DistanceChart.tsx';
import { format } from '../../engine/quantity/format.ts';
import { sReport } from '../../engine/stages/path/sMeter.ts';
import { useValue } from '../../store/hooks.ts';

interface Reach {
  readonly distance: Float64Array;
  readonly received: Float64Array;
}

interface GradeRow {
  readonly grade: string;
  readonly spare: number;
}

type Picture = Omit<CurveChartProps, 'x'> & { upTo: number };

/** Levels that the scale names: S1, S3 … S9, and 20 and 40 dB over. */
const scale = [-133, -121, -109, -97, -85, -73, -53, -33] as const;

/** The report over distance, with its spread, the noise it has to top, and where nothing arrives. */
export function ReachPicture() {
  const picture = useDeferredValue(usePicture());
  return picture && <DistanceChart {...picture} />;
}

function usePicture(): Picture | null {
  const reach = useValue<Reach>('path.reach');
  const distance = useValue<number>('path.distance');
  const route = useValue<string>('path.route');
  const spread = useValue<number>('path.spread');
  const noise = useValue<number>('path.noise');
  const received = useValue<number>('path.received');
  const report = useValue<string>('path.report');
  const grades = useValue<readonly GradeRow[]>('path.grades');
  const skip = useValue<number>('path.skip');
  return useMemo(() => {
    if (reach === null || spread === null || distance === null) return null;
    const curve = inKilometres(reach);
    const upTo = curve.x.at(-1) ?? 1;
    const shifted = (by: number) => ({ x: curve.x, y: curve.y.map((level) => level + by) });
    const levels = curve.y.filter(Number.isFinite);
    const least = grades?.find((row) => row.grade === 'justUsable');
    const usable = received === null || !least ? null : received - least.spare;
    const from = Math.min(-121, Math.floor(Math.min(...levels, noise ?? 0) - spread - 3));
    const to = Math.max(-51, Math.ceil(Math.max(...levels) + spread + 6));
    const nothing = skip === null || route !== 'skyWave' ? 0 : skip / 1000;
    const edge = { ink: 'reference', nameAt: 0.7 * upTo, silent: true } as const;
    return {
      title: 'The report over distance',
      summary: summaryOf(report, distance, spread, noise),
      curves: [
        { ...curve, label: 'as reckoned', ink: 'main', nameAt: 0.5 * upTo, side: 'above' },
        { ...shifted(spread), ...edge, label: 'a good day', side: 'above' },
        { ...shifted(-spread), ...edge, label: 'a poor day', side: 'below' },
      ],
      upTo,
      y: {
        from,
        to,
        name: 'report there',
        unit: '',
        ticks: scale.filter((level) => level >= from && level <= to),
        format: (level: number) => (level < -124 ? format(level, 'dBm', 2) : short(level)),
      },
      bands:
        nothing > 0
          ? [{ from: 0, to: Math.min(nothing, upTo), kind: 'unwanted', label: 'skipped' }]
          : [],
      flats: [
        ...(noise === null
          ? []
          : [{ at: noise, label: 'noise there', end: 'left', side: 'below' } as const]),
        ...(usable === null ? [] : [{ at: usable, label: 'just usable', end: 'left' } as const]),
      ],
      uprights: [{ at: distance / 1000, label: format(distance, 'm', 3), kind: 'live' }],
      points: [],
      tall: 22,
    } satisfies Picture;
  }, [reach, distance, route, spread, noise, received, report, grades, skip]);
}

/** Kilometres and dBm, with a gap wherever a distance is left out because nothing arrives. */
function inKilometres({ distance, received }: Reach): { x: number[]; y: number[] } {
  const x: number[] = [];
  const y: number[] = [];
  const step = Math.min(...Array.from(distance.subarray(1), (d, i) => d - (distance[i] ?? 0)));
  distance.forEach((d, i) => {
    const before = distance[i - 1];
    if (before !== undefined && d - before > 1.5 * step) {
      x.push((before + d) / 2000);
      y.push(Number.NaN);
    }
    x.push(d / 1000);
    y.push(received[i] ?? Number.NaN);
  });
  return { x, y };
}

const short = (level: number) => sReport(level).replace('S9+', '+').replace(' dB', '');

function summaryOf(
  report: string | null,
  distance: number,
  spread: number,
  noise: number | null,
): string {
  const here =
    report === null
      ? `Nothing arrives over ${format(distance, 'm', 3)}`
      : `${report} over ${format(distance, 'm', 3)}, ${format(spread, 'dB', 3)} more or less from one day to the next`;
  return noise === null ? `${here}.` : `${here}; the noise there is at ${format(noise, 'dBm', 3)}.`;
}
