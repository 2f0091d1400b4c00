import { useCallback, useMemo } from 'react';
import { MapChart } from '../../design/chart/MapChart.tsx';
import { type DayAnswer, ways } from '../../engine/errands/day/dayAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { sReport } from '../../engine/stages/path/sMeter.ts';
import { useValue } from '../../store/hooks.ts';
import { useBench } from '../../store/store.ts';

const gradeWords = ['too weak for speech', 'speech just usable', 'speech fair', 'speech good'];

/** S1 and thirty decibels over S9, dBm: the ends of the shading. */
const FAINT = -121;
const STRONG = -43;

const KILOMETRES = [20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000];

/** Every hour and every distance; a cell can be taken over to the Path leaf. */
export function DayPicture({ answer }: { answer: DayAnswer }) {
  const hour = useValue<number>('path.hour') ?? 0;
  const distance = useValue<number>('path.distance') ?? 0;
  const sayAll = useBench((s) => s.sayAll);
  const rows = answer.distances.length;
  const cells = useMemo(
    () =>
      Array.from(answer.received, (level, i) => {
        const grade = answer.grade[i] ?? 0;
        if (!Number.isFinite(level)) return { shade: 0, kind: 'blank' } as const;
        if (grade === 0) return { shade: 0, kind: 'hatched' } as const;
        const shade = Math.min(1, Math.max(0, (level - FAINT) / (STRONG - FAINT)));
        return { shade, kind: 'whole' } as const;
      }),
    [answer],
  );
  const axes = useMemo(() => axesOf(answer), [answer]);
  const read = useCallback(
    (column: number, row: number) => cellWords(answer, column * rows + row, column, row),
    [answer, rows],
  );
  const choose = useCallback(
    (column: number, row: number) => {
      const way = ways[answer.way[column * rows + row] ?? 0];
      const hops = answer.hops[column * rows + row] ?? 0;
      sayAll(
        {
          'path.hour': `${column}h`,
          'path.distance': format(answer.distances[row] ?? 1, 'm', 3),
          'path.route': way === 'ground' ? 'groundWave' : 'skyWave',
          'path.layer': way === 'e' ? 'e' : 'f2',
          'path.hops': hops > 0 ? String(hops) : '',
        },
        'Hour and distance taken from the day',
      );
      useBench.getState().show('path');
    },
    [answer, rows, sayAll],
  );
  const marked = useMemo(
    () => ({
      column: Math.floor(hour / 3600) % 24,
      row: nearest(answer.distances, distance),
    }),
    [answer, hour, distance],
  );
  return (
    <MapChart
      title="A day over all distances"
      summary="Each cell is one hour and one distance: the darker, the stronger the signal."
      {...axes}
      cells={cells}
      read={read}
      marked={marked}
      onChoose={choose}
      choose="Show its sum"
      shades={{ light: 'S1', dark: 'S9+30 dB' }}
      legend={{
        whole: 'speech gets through',
        hatched: 'arrives, but too weak for speech',
        blank: 'nothing arrives',
      }}
    />
  );
}

/** Edges between hours, and between distances on a scale of ratios. */
function axesOf({ distances }: DayAnswer) {
  const logs = Array.from(distances, (d) => Math.log10(d / 1000));
  const step = ((logs.at(-1) ?? 1) - (logs[0] ?? 0)) / (logs.length - 1);
  const edges = [...logs.map((at) => at - step / 2), (logs.at(-1) ?? 1) + step / 2];
  return {
    x: {
      edges: Array.from({ length: 25 }, (_, i) => i),
      ticks: [0, 3, 6, 9, 12, 15, 18, 21, 24],
      name: 'local time, h',
    },
    y: {
      edges,
      ticks: KILOMETRES.map((km) => Math.log10(km)),
      name: 'km',
      format: (value: number) => String(Math.round(10 ** value)),
    },
  };
}

function cellWords(answer: DayAnswer, at: number, column: number, row: number): string {
  const level = answer.received[at] ?? Number.NEGATIVE_INFINITY;
  const place = `${column} h, ${format(answer.distances[row] ?? 0, 'm', 2)}`;
  if (!Number.isFinite(level)) return `${place}: nothing arrives.`;
  const hops = answer.hops[at] ?? 0;
  const by = {
    none: '',
    ground: 'along the ground',
    e: `${hops === 1 ? 'one hop' : `${hops} hops`} by the E layer`,
    f2: `${hops === 1 ? 'one hop' : `${hops} hops`} by the F2 layer`,
  }[ways[answer.way[at] ?? 0] ?? 'none'];
  return `${place}: ${sReport(level)}, ${gradeWords[answer.grade[at] ?? 0]}; ${by}.`;
}

function nearest(distances: Float64Array, wanted: number): number {
  let best = 0;
  distances.forEach((d, i) => {
    if (Math.abs(Math.log(d / wanted)) < Math.abs(Math.log((distances[best] ?? 1) / wanted))) {
      best = i;
    }
  });
  return best;
}
