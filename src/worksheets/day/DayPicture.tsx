import { useMemo } from 'react';
import { Choice } from '../../design/Choice.tsx';
import {
  type MapCell,
  MapChart,
  type MapLook,
  type MapPlace,
} from '../../design/chart/MapChart.tsx';
import type { DayAnswer } from '../../engine/errands/day/dayAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { sReport } from '../../engine/stages/path/sMeter.ts';
import { gradeWords, hour, hourly } from './dayWords.ts';

/** What the picture shows of each cell. */
export type Shows = 'units' | 'speech';

interface DayPictureProps {
  answer: DayAnswer;
  shows: Shows;
  onShows: (shows: Shows) => void;
  /** The cell that the Path leaf now works with. */
  marked: MapPlace;
  at: MapPlace;
  onPick: (place: MapPlace) => void;
}

type Legend = readonly (readonly [MapLook, string])[];

const legends: Readonly<Record<Shows, Legend>> = {
  units: [
    ['blank', 'nothing arrives'],
    ['hatched', 'below S1'],
    ['shade1', 'S1 to S3'],
    ['shade2', 'S4 to S6'],
    ['shade3', 'S7 to S9'],
    ['shade4', 'over S9, in dB'],
  ],
  speech: [
    ['blank', 'nothing arrives'],
    ['hatched', 'too weak for speech'],
    ['dotted', 'just usable'],
    ['shade2', 'fair'],
    ['shade4', 'good'],
  ],
};

const KILOMETRES = [20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000];

/** Every hour and every distance, as S-units or as speech. */
export function DayPicture({ answer, shows, onShows, ...places }: DayPictureProps) {
  const cells = useMemo(
    () =>
      Array.from(answer.received, (level, i) =>
        shows === 'units' ? unitsCell(level) : speechCell(level, answer.grade[i] ?? 0),
      ),
    [answer, shows],
  );
  const axes = useMemo(() => axesOf(answer), [answer]);
  const { row } = places.at;
  const table = useMemo(() => hourly(answer, row), [answer, row]);
  const far = format(answer.distances[row] ?? 0, 'm', 3);
  return (
    <>
      <Choice
        id="day:shows"
        label="Shown"
        form="row"
        options={[
          ['units', 'S-units'],
          ['speech', 'Speech'],
        ]}
        value={shows}
        onChoose={(key) => onShows(key as Shows)}
      />
      <MapChart
        title={shows === 'units' ? 'The report, hour by hour' : 'Speech, hour by hour'}
        summary={`Each cell is one hour and one distance. Over ${far}, ${runsOf(answer, row)}.`}
        {...axes}
        {...places}
        cells={cells}
        legend={legends[shows]}
        names={{ marked: 'on the Path leaf', at: 'looked at' }}
        table={table}
      />
    </>
  );
}

function unitsCell(level: number): MapCell {
  if (!Number.isFinite(level)) return { look: 'blank' };
  const report = sReport(level);
  const over = /\+(\d+)/.exec(report)?.[1];
  if (over !== undefined) return { look: 'shade4', mark: `+${over}` };
  const units = Number(/^S(\d)/.exec(report)?.[1] ?? 0);
  if (units < 1) return { look: 'hatched' };
  return {
    look: units <= 3 ? 'shade1' : units <= 6 ? 'shade2' : 'shade3',
    mark: String(units),
  };
}

const speechLooks: readonly MapLook[] = ['hatched', 'dotted', 'shade2', 'shade4'];

const speechCell = (level: number, grade: number): MapCell => ({
  look: Number.isFinite(level) ? (speechLooks[grade] ?? 'blank') : 'blank',
});

/** At which hours speech gets through over one distance, in words. */
function runsOf({ grade, hours, distances }: DayAnswer, row: number): string {
  const open = Array.from(hours, (_, h) => (grade[h * distances.length + row] ?? 0) > 0);
  if (open.every(Boolean)) return 'speech gets through at all hours';
  if (!open.some(Boolean)) return 'speech gets through at no hour';
  const runs: string[] = [];
  open.forEach((isOpen, h) => {
    if (!isOpen || open[(h + 23) % 24]) return;
    let end = h;
    while (open[(end + 1) % 24]) end += 1;
    runs.push(end === h ? `at ${hour(h)}` : `from ${hour(h)} to ${hour(end % 24)}`);
  });
  return `speech gets through ${runs.join(' and ')}: ${gradeWords[Math.max(...gradesOf(grade, row, distances.length))]} at best`;
}

const gradesOf = (grade: Uint8Array, row: number, rows: number) =>
  grade.filter((_, i) => i % rows === row);

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
