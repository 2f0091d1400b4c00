import { noResults, type Problem, type Seen, type Work } from '../../fields/stage.ts';
import { format } from '../../quantity/format.ts';
import { bagFields } from './fields.ts';
import { bestSplit, FEWEST, hasTwoHumps } from './humps.ts';
import { type Counted, type Lot, lotOf } from './lot.ts';
import type { bagReads } from './reads.ts';
import { closest, meanOf, medianGiven, rmsAbout } from './statistics.ts';

type Results = Work<typeof bagFields>['results'];

/** Sets of up to so many crystals are looked for. */
const LARGEST_SET = 12;

/** Reads the list of crystals and says what the lot is like. */
export function workBag({
  crystals,
}: Seen<typeof bagFields, typeof bagReads>): Work<typeof bagFields> {
  if (crystals === null) return { results: noResults(bagFields), problems: [] };
  const lot = lotOf(crystals);
  const results: Results = {
    ...noResults(bagFields),
    rows: rowsOf(lot),
    number: lot.counted.length,
    aside: lot.rows.length - lot.counted.length,
    ...(lot.counted.length === 0 ? {} : figures(lot.counted, lot.median)),
  };
  const measured = { fs: 'measured', lm: 'measured', rm: 'measured', c0: 'measured' } as const;
  return { results, problems: problems(lot), origins: measured };
}

function rowsOf({ rows, counted, median }: Lot): NonNullable<Results['rows']> {
  const counts = new Set<number>(counted.map(({ line }) => line));
  return rows.map(({ line, label, fs, lm, rm, c0, note }) => {
    const stands = counts.has(line);
    const far =
      fs !== null && !stands && median !== null
        ? `set aside: ${format(Math.abs(fs - median), 'Hz', 3)} from the others`
        : '';
    return {
      line,
      label,
      fs,
      off: fs === null || median === null ? null : fs - median,
      lm,
      rm,
      c0,
      standing: stands ? 'counts' : 'aside',
      note: [note, far].filter((one) => one !== '').join('; '),
    };
  });
}

function figures(counted: readonly Counted[], median: number | null): Partial<Results> {
  const sorted = counted.map(({ fs }) => fs);
  const n = sorted.length;
  const [lowest = 0, highest = 0] = [sorted[0], sorted[n - 1]];
  const split = n < 2 ? null : bestSplit(sorted);
  const told = split !== null && n >= FEWEST && split.within > 0;
  return {
    fs: median,
    lowest,
    highest,
    range: highest - lowest,
    spread: n < 2 ? null : Math.sqrt(n / (n - 1)) * rmsAbout(sorted, meanOf(sorted)),
    lm: medianGiven(counted.map(({ lm }) => lm)),
    rm: medianGiven(counted.map(({ rm }) => rm)),
    c0: medianGiven(counted.map(({ c0 }) => c0)),
    sets: Array.from({ length: Math.max(0, Math.min(LARGEST_SET, n) - 1) }, (_, i) => {
      const first = closest(sorted, i + 2);
      const [low, high] = [counted[first], counted[first + i + 1]];
      return {
        crystals: i + 2,
        within: (high?.fs ?? 0) - (low?.fs ?? 0),
        from: low?.label ?? null,
        to: high?.label ?? null,
        low: low?.fs ?? null,
        high: high?.fs ?? null,
      };
    }),
    humps: !told ? 'few' : hasTwoHumps(sorted, split) ? 'two' : 'one',
    lowerHump: told ? split.lower : null,
    upperHump: told ? split.upper : null,
    clusters: told ? 2 * Math.log(split.whole / split.within) : null,
  };
}

function problems({ rows, counted, tooMany, unused }: Lot): Problem[] {
  const found: Problem[] = [];
  const warn = (says: string, help?: string) =>
    found.push({
      field: 'bag.crystals',
      weight: 'warns',
      says,
      ...(help === undefined ? {} : { try: help }),
    });
  if (counted.length === 0) {
    warn(
      'No line of the list has a frequency of a crystal.',
      'One frequency a line will do: 7198.612 kHz, or 7.198612M.',
    );
    return found;
  }
  const aside = rows.length - counted.length;
  if (aside > 0) {
    warn(
      aside === 1
        ? 'One line of the list is set aside; the table says why.'
        : `${aside} lines of the list are set aside; the table says why.`,
    );
  }
  if (tooMany > 0) warn(`The last ${tooMany} lines are left out: a bag has 200 crystals at most.`);
  if (unused.length > 0) {
    warn(
      `Not used of the list: ${unused.join(', ')}.`,
      'Columns may be called label, fs, Lm, Rm, C0, Cm or Qu.',
    );
  }
  return found;
}
