import { type DayAnswer, ways } from '../../engine/errands/day/dayAnswer.ts';
import { format } from '../../engine/quantity/format.ts';
import { sReport } from '../../engine/stages/path/sMeter.ts';

/** The grades of speech by their numbers. */
export const gradeWords = ['too weak', 'just usable', 'fair', 'good'] as const;

/** An hour as it is spoken. */
export const hour = (column: number): string => `${column} h`;

/** The way of a cell's signal, in words. */
export function wayWords({ way, hops }: DayAnswer, at: number): string {
  const count = hops[at] ?? 0;
  const many = count === 1 ? 'one hop' : `${count} hops`;
  return {
    none: '',
    ground: 'along the ground',
    e: `${many} by the E layer`,
    f2: `${many} by the F2 layer`,
  }[ways[way[at] ?? 0] ?? 'none'];
}

/** A cell in a sentence. */
export function cellWords(answer: DayAnswer, column: number, row: number): string {
  const at = column * answer.distances.length + row;
  const level = answer.received[at] ?? Number.NEGATIVE_INFINITY;
  const place = `At ${hour(column)} over ${format(answer.distances[row] ?? 0, 'm', 3)}`;
  if (!Number.isFinite(level)) return `${place} nothing arrives.`;
  const speech = answer.snr.length === 0 ? '' : `, speech ${gradeWords[answer.grade[at] ?? 0]}`;
  return `${place}: ${sReport(level)}${speech}; ${wayWords(answer, at)}.`;
}

/** One distance, hour by hour, as a table. */
export function hourly(answer: DayAnswer, row: number) {
  const rows = answer.distances.length;
  return {
    columns: [
      { key: 'hour', label: 'Local time', as: 'words' },
      { key: 'report', label: 'Report', as: 'words' },
      { key: 'speech', label: 'Speech', as: 'words' },
      { key: 'way', label: 'Way', as: 'words' },
    ] as const,
    rows: Array.from(answer.hours, (_, h) => {
      const at = h * rows + row;
      const level = answer.received[at] ?? Number.NEGATIVE_INFINITY;
      const arrives = Number.isFinite(level);
      return {
        key: String(h),
        cells: {
          hour: hour(h),
          report: arrives ? sReport(level) : 'nothing',
          speech: arrives && answer.snr.length > 0 ? gradeWords[answer.grade[at] ?? 0] : '–',
          way: arrives ? wayWords(answer, at) : '–',
        },
      };
    }),
  };
}
