import { format } from '../../quantity/format.ts';
import type { Readings } from './readings.ts';
import type { MeasureSeen } from './seen.ts';
import { type Found, solve } from './solve.ts';

/** What of the crystal a reading's error can move. */
export const MOVED = ['fs', 'lm', 'cm', 'rm', 'qu'] as const;
export type MovedKey = (typeof MOVED)[number];

/** One reading, how far it may be off, and the crystal worked anew with it so much up and down. */
export interface Varied {
  readonly reading: string;
  readonly error: string;
  readonly up: Found;
  readonly down: Found;
}

/**
 * Each reading of a set raised and lowered by its error. Null where the readings lie so near to
 * what is impossible that one of these cannot be solved.
 */
export function varied(readings: Readings, seen: MeasureSeen): readonly Varied[] | null {
  const rows: Varied[] = [];
  for (const { reading, error, by, says } of errorsOf(readings, seen)) {
    const up = solve(moved(readings, reading, by));
    const down = solve(moved(readings, reading, -by));
    if (typeof up === 'string' || typeof down === 'string') return null;
    rows.push({ reading: says, error, up, down });
  }
  return rows;
}

/** Half of the difference that an error makes; null where the way of measuring does not tell. */
export function changeOf({ up, down }: Varied, key: MovedKey): number | null {
  const [high, low] = [up[key], down[key]];
  return high === null || low === null ? null : (high - low) / 2;
}

/** Share of a figure below which what an error does to it is nothing; of fs it is 0.01 Hz. */
const NOTHING = 1e-5;

/** The same for a table, where what does not matter is left out. */
export function noteworthy(row: Varied, key: MovedKey): number | null {
  const change = changeOf(row, key);
  const least = key === 'fs' ? 0.01 : NOTHING * Math.abs(row.up[key] ?? 0);
  return change === null || Math.abs(change) < least ? null : change;
}

interface ReadingError {
  readonly reading: string;
  readonly by: number;
  readonly error: string;
  readonly says: string;
}

/** The readings that count, with their errors. The width is a difference of two frequencies. */
function errorsOf(readings: Readings, seen: MeasureSeen): readonly ReadingError[] {
  const { frequencyError, levelError, capacitanceError, jigError, oscillatorError } = seen;
  const hertz = (reading: string, says: string, times = 1): ReadingError => {
    const by = frequencyError * times;
    return { reading, by, error: format(by, 'Hz', 2), says };
  };
  const level = (reading: string, says: string): ReadingError => {
    return { reading, by: levelError, error: format(levelError, 'dB', 4), says };
  };
  const farad = (reading: string, says: string, by = capacitanceError): ReadingError => {
    return { reading, by, error: format(by, 'F', 2), says };
  };
  if (readings.by === 'fixture') {
    return [
      hertz('peak', 'Frequency of the peak'),
      level('loss', 'Loss at the peak'),
      level('drop', 'Where 3 dB down was taken'),
      hertz('width', 'Width of the peak', Math.SQRT2),
      farad('c0', 'Holder capacitance'),
      {
        reading: 'end',
        by: readings.end * jigError,
        error: format(jigError, '%', 2),
        says: 'Resistance of the jig',
      },
    ];
  }
  if (readings.by === 'pair') {
    return [
      hertz('series', 'Peak of the sweep'),
      hertz('parallel', 'Dip of the sweep'),
      farad('c0', 'Holder capacitance'),
    ];
  }
  return [
    hertz('first', 'First frequency'),
    hertz('second', 'Second frequency'),
    ...(readings.firstSeries === null ? [] : [farad('firstSeries', 'First series capacitor')]),
    farad('secondSeries', 'Second series capacitor'),
    farad('c0', 'Holder capacitance'),
    ...(readings.third === null
      ? [farad('oscillator', 'The oscillator’s capacitance', oscillatorError)]
      : [hertz('third', 'Third frequency'), farad('across', 'Capacitor across the oscillator')]),
  ];
}

const moved = (readings: Readings, reading: string, by: number): Readings => ({
  ...readings,
  [reading]: ((readings as unknown as Record<string, number>)[reading] as number) + by,
});
