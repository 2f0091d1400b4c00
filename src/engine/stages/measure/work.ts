import { noResults, type Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import { changeOf, MOVED, type MovedKey, noteworthy, type Varied, varied } from './doubts.ts';
import { measureFields } from './fields.ts';
import { cautions, holderProblem, misfit, nearLimit, unlike } from './problems.ts';
import { endOf, holderOf, oscillatorOf, readingsOf } from './readings.ts';
import type { MeasureSeen } from './seen.ts';
import { shortcut } from './shortcut.ts';
import { solve } from './solve.ts';

type Answer = Work<typeof measureFields>;

/** The crystal of the readings taken, with the shortcut beside it and the doubt in each figure. */
export function workMeasure(seen: MeasureSeen): Answer {
  if (seen.method === 'none' || seen.method === 'sweep') {
    return { results: noResults(measureFields), problems: [] };
  }
  const holder = holderProblem(seen);
  if (holder !== null) return { results: noResults(measureFields), problems: [holder] };
  const c0 = holderOf(seen);
  const given: Answer['results'] = {
    ...noResults(measureFields),
    c0,
    c0Error: c0 === null ? null : seen.capacitanceError,
    end: seen.method === 'fixture' ? endOf(seen) : null,
    shunt: c0 === null || seen.method === 'shift' ? null : c0 + seen.beside,
    oscillator: seen.method === 'shift' ? oscillatorOf(seen) : null,
    ...shortResults(seen),
  };
  const readings = readingsOf(seen);
  if (readings === null) return { results: given, problems: [], origins: measured };
  const found = solve(readings);
  if (typeof found === 'string') {
    return { results: given, problems: [misfit(seen, readings, found)], origins: measured };
  }
  const impossible = unlike(readings, found);
  if (impossible !== null) return { results: given, problems: [impossible], origins: measured };

  const rows = varied(readings, seen);
  const { fs, lm, cm, rm, qu } = found;
  const off = (short: number | null, exact: number | null) =>
    short === null || exact === null ? null : (short - exact) / exact;
  const problems = cautions(seen, readings, found);
  if (rows === null) problems.push(nearLimit(readings));
  return {
    results: {
      ...given,
      fs,
      lm,
      cm,
      rm,
      qu,
      fp: fs * Math.sqrt(1 + cm / readings.c0),
      oscillator: found.oscillator,
      ...errors(rows),
      fsOff: given.fsShort === null ? null : given.fsShort - fs,
      lmOff: off(given.lmShort, lm),
      cmOff: off(given.cmShort, cm),
      rmOff: off(given.rmShort, rm),
    },
    problems,
    origins: measured,
  };
}

const measured = {
  fs: 'measured',
  lm: 'measured',
  cm: 'measured',
  rm: 'measured',
  qu: 'measured',
  c0: 'measured',
} as const;

function shortResults(seen: MeasureSeen) {
  const short = shortcut(seen);
  return {
    fsShort: short?.fs ?? null,
    lmShort: short?.lm ?? null,
    cmShort: short?.cm ?? null,
    rmShort: short?.rm ?? null,
  };
}

function errors(rows: readonly Varied[] | null) {
  const sum = (key: MovedKey) => (rows === null ? null : rootSum(rows, key));
  return {
    fsError: sum('fs'),
    lmError: sum('lm'),
    cmError: sum('cm'),
    rmError: sum('rm'),
    quError: sum('qu'),
    doubts:
      rows?.map((row) => ({
        reading: row.reading,
        error: row.error,
        fs: noteworthy(row, 'fs'),
        lm: noteworthy(row, 'lm'),
        cm: noteworthy(row, 'cm'),
        rm: noteworthy(row, 'rm'),
        qu: noteworthy(row, 'qu'),
      })) ?? null,
    weakest: rows === null ? null : weakest(rows),
  };
}

/** Root of the sum of squares of what each reading's error does; null where nothing is told. */
function rootSum(rows: readonly Varied[], key: MovedKey): number | null {
  let sum = 0;
  for (const row of rows) {
    const change = changeOf(row, key);
    if (change === null) return null;
    sum += change ** 2;
  }
  return Math.sqrt(sum);
}

/** The reading that weighs most in Cm and, where there is one, in Rm. */
function weakest(rows: readonly Varied[]): string {
  const parts = MOVED.filter((key) => key === 'cm' || key === 'rm').flatMap((key) => {
    const all = rootSum(rows, key);
    if (all === null || all === 0) return [];
    const share = (row: Varied) => ((changeOf(row, key) ?? 0) / all) ** 2;
    const worst = rows.reduce((a, b) => (share(b) > share(a) ? b : a));
    const name = key === 'cm' ? 'Cm' : 'Rm';
    return [
      `${format(share(worst), '%', 2)} of the doubt in ${name} comes from: ${lower(worst.reading)}`,
    ];
  });
  return parts.length === 0 ? 'No error was given for any reading.' : `${parts.join('; ')}.`;
}

/** A reading's name within a sentence. */
const lower = (name: string) => name.charAt(0).toLowerCase() + name.slice(1);
