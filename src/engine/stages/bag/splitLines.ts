import { tidy } from '../../quantity/tidy.ts';
import { alikeByPlace } from './alike.ts';

/** A line of the pasted text that holds something. */
export interface Line {
  /** Counted from 1, blank lines too. */
  readonly number: number;
  readonly text: string;
  readonly cells: readonly string[];
}

/** Lines that nobody means as a crystal: blank, or a remark. */
const isRemark = (text: string) => /^\s*($|[!%]|\/\/|--|#)/.test(text);

/** Ways to take a line apart, in the order in which they are believed. */
const ways: readonly ((text: string) => string[])[] = [
  (text) => [text],
  (text) => text.split('\t'),
  (text) => text.split(';'),
  (text) => text.split('|'),
  (text) => text.split(/,\s+/),
  (text) => text.split(','),
  (text) => text.split(/ {2,}/),
  bySpaces,
];

/**
 * Takes a pasted list apart into lines and cells. How the cells are set off is decided for the whole
 * list: the first way by which most lines come to hold a frequency.
 */
export function splitLines(text: string): Line[] {
  const lines = text
    .split(/\r\n|\n|\r/)
    .map((line, i) => ({
      number: i + 1,
      text: line.replace(/\u00a0|\u202f/g, ' ').replace(/^ +|\s+$/g, ''),
    }))
    .filter((line) => !isRemark(line.text) || isHeading(line.text));
  const looked = sampled(lines);
  const held = ways.map((way) =>
    Math.max(0, ...alikeByPlace(looked.map((line) => way(line.text).map(unquoted)))),
  );
  const most = Math.max(...held);
  // A mark that stands in most lines sets off cells, even where a line could pass for one number.
  const marked = ['\t', ';', '|'].findIndex(
    (mark) => looked.filter((line) => line.text.includes(mark)).length > looked.length / 2,
  );
  const first = held.findIndex((count) => count >= most * 0.9);
  const way = ways[marked >= 0 && (held[marked + 1] ?? 0) > 0 ? marked + 1 : first] ?? bySpaces;
  return lines.map((line) => ({
    ...line,
    cells: way(line.text.replace(/^#\s*/, '')).map((cell) => unquoted(cell)),
  }));
}

/** Lines enough to judge by. */
export function sampled<T>(lines: readonly T[]): T[] {
  const step = Math.max(1, Math.floor(lines.length / 20));
  return lines.filter((_, i) => i % step === 0);
}

/** A remark that names columns. */
const isHeading = (text: string) =>
  /^\s*#/.test(text) && /\b(fs|freq|frequency|hz|khz|mhz)\b/i.test(text);

const unquoted = (cell: string) =>
  cell
    .trim()
    .replace(/^(["'])(.*)\1$/, '$2')
    .trim();

/**
 * Cells by single spaces: a unit joins the number before it, groups of three digits join the one or
 * more before them.
 */
function bySpaces(text: string): string[] {
  const cells: string[] = [];
  for (const word of tidy(text).split(' ')) {
    const last = cells.at(-1) ?? '';
    const unit = /^[a-zµΩ]{1,5}$/i.test(word) && /\d$/.test(last);
    const group = /^\d{3}([.,]\d+)?$/.test(word) && /^\d{1,3}( \d{3})*$/.test(last);
    if (unit || group) cells[cells.length - 1] = `${last} ${word}`;
    else cells.push(word);
  }
  return cells;
}
