import { type Figure, readCell, shortened } from './cell.ts';
import { type Columns, columnsOf } from './columns.ts';
import { type Line, splitLines } from './splitLines.ts';

/** Most crystals of one bag. */
export const MOST = 200;

/** A line of the list, as a crystal. Hz, H, Ω, F; null where nothing is given or understood. */
export interface Read {
  /** Number of the line in the text, from 1. */
  readonly line: number;
  readonly label: string;
  readonly fs: number | null;
  readonly lm: number | null;
  readonly rm: number | null;
  readonly c0: number | null;
  /** What is to be said of the line; empty where nothing is. */
  readonly note: string;
}

export interface ReadBag {
  readonly rows: readonly Read[];
  /** Lines beyond the most that are taken. */
  readonly tooMany: number;
  /** Names of columns that nothing is made of. */
  readonly unused: readonly string[];
}

/**
 * Understands a pasted list of crystals: from a spreadsheet, a CSV file, a counter's log.
 *
 * Every line that is neither blank nor a remark comes back as a row; what is wrong with it is said
 * in its note. Labels are made single words that occur once, so that a choice can name them.
 */
export function readBag(text: string): ReadBag {
  const lines = splitLines(text);
  const columns = columnsOf(lines);
  const body = lines.filter(({ number }) => number > columns.headingEnds);
  const heading = lines.filter(({ number }) => number < columns.headingEnds);
  const rows = [
    ...heading.map(unread),
    ...body.slice(0, MOST).map((line) => readLine(line, columns)),
  ];
  return { rows: uniquely(rows), tooMany: Math.max(0, body.length - MOST), unused: columns.unused };
}

const unread = (line: Line): Read => ({
  line: line.number,
  label: '',
  fs: null,
  lm: null,
  rm: null,
  c0: null,
  note: `“${shortened(line.text)}” stands before the heading and is not used`,
});

function readLine(line: Line, columns: Columns): Read {
  const says: string[] = [];
  const at = (figure: Figure): number | null => {
    const column = columns.at[figure];
    const text = column === undefined ? undefined : line.cells[column.place];
    if (column === undefined || text === undefined) return null;
    const cell = readCell(text, figure, column.scale);
    if (cell.says !== '') says.push(cell.says);
    return cell.value;
  };
  const fs = at('fs');
  const given = { lm: at('lm'), rm: at('rm'), c0: at('c0'), cm: at('cm'), qu: at('qu') };
  const omega = fs === null ? null : 2 * Math.PI * fs;
  const lm =
    given.lm ?? (omega === null || given.cm === null ? null : 1 / (omega * omega * given.cm));
  const rm =
    given.rm ??
    (omega === null || lm === null || given.qu === null ? null : (omega * lm) / given.qu);
  if (fs === null && says.length === 0) says.push(`“${shortened(line.text)}” has no frequency`);
  const label = columns.label === null ? '' : (line.cells[columns.label] ?? '');
  return { line: line.number, label, fs, lm, rm, c0: given.c0, note: says.join('; ') };
}

/** Labels as single words, each once; those without one are counted. */
function uniquely(rows: readonly Read[]): Read[] {
  const taken = new Map<string, number>();
  const wanted = new Set(rows.map(({ label }) => oneWord(label)));
  let counted = 0;
  return rows.map((row) => {
    if (row.fs === null) return { ...row, label: oneWord(row.label) };
    counted += 1;
    const own = oneWord(row.label);
    let label = own;
    if (own === '') {
      label = String(counted);
      while (taken.has(label) || wanted.has(label)) label = `${label}a`;
    }
    const before = taken.get(label);
    if (before === undefined) {
      taken.set(label, row.line);
      return { ...row, label };
    }
    let another = label;
    for (let i = 2; taken.has(another) || wanted.has(another); i += 1) another = `${label}.${i}`;
    taken.set(another, row.line);
    const note = `label ${label} stands already in line ${before}; called ${another} here`;
    return {
      ...row,
      label: another,
      note: [row.note, note].filter((one) => one !== '').join('; '),
    };
  });
}

const oneWord = (label: string) =>
  label
    .trim()
    .replace(/[\s,;]+/g, '-')
    .slice(0, 16);
