import { cellOf, type Layout, layoutOf, split } from './columnLayout.ts';
import { named, type Title } from './columnTitles.ts';
import { columnsOf, linesOf, type SweepNote, type SweepText } from './sweepText.ts';

/**
 * Reads columns of numbers: any of the usual separators, decimal point or comma, header or none,
 * units in the header or behind each number. What each column holds is a guess, to be shown.
 */
export function readColumns(text: string): SweepText {
  const lines = linesOf(text);
  const layout = layoutOf(lines);
  if (layout === null) {
    const says = 'No line holds two numbers or more.';
    const notes = text.trim() === '' ? [] : [{ lines: lines.length, says }];
    return { format: 'no rows', columns: [], reference: null, unitSupposed: false, notes };
  }
  const rows: number[][] = [];
  const head: string[] = [];
  const odd: string[] = [];
  let units: string[] = [];
  for (const line of lines) {
    const cells = split(line, layout).map((cell) => cellOf(cell, layout));
    const row = cells.map((cell) => cell?.value ?? null);
    if (row.length === layout.count && row.every((x) => x !== null)) {
      if (rows.length === 0) units = cells.map((cell) => cell?.unit ?? '');
      rows.push(row as number[]);
    } else if (line.trim() !== '') (rows.length === 0 ? head : odd).push(line);
  }
  const titles = titlesOf(head, layout);
  const values = columnsOf(rows, layout.count);
  const { columns, unitSupposed } = named(titles, units, values);
  return {
    format: inWords(layout, titles),
    columns,
    reference: null,
    unitSupposed,
    notes: [...said(head, layout, titles !== null), ...left(odd)],
  };
}

/** The last line before the numbers that has as many cells as they. */
function titlesOf(head: readonly string[], layout: Layout): Title[] | null {
  for (const line of [...head].reverse()) {
    const cells = split(line.replace(/^\s*[#!%;/*]+\s*/, ''), layout);
    if (cells.length === layout.count) return cells.map(titleOf);
  }
  return null;
}

/** A title and the unit in it: `f (MHz)`, `Level [dBm]`, `freq/kHz`, `S21 dB`, `MHz`. */
function titleOf(cell: string): Title {
  const text = cell.replace(/^["']|["']$/g, '').trim();
  const bracketed = /^(.*?)\s*[([{]\s*([^)\]}]*?)\s*[)\]}]\s*$/.exec(text);
  // Re(S21) is a name, not a unit.
  if (bracketed && !/^(re|im|real|imag|abs|mag|arg|db)$/i.test(bracketed[1] ?? '')) {
    return { name: bracketed[1] || text, unit: bracketed[2] ?? '' };
  }
  const behind = /^(.+?)[\s/_,]+([kMG]?Hz|dB\w*|[mµu]?V\w*|deg\w*|°|rad)$/i.exec(text);
  if (behind) return { name: behind[1] ?? text, unit: behind[2] ?? '' };
  return /^([kMG]?Hz|dB\w*|[mµu]?V(pp|rms)?)$/i.test(text)
    ? { name: text, unit: text }
    : { name: text, unit: '' };
}

function said(head: readonly string[], layout: Layout, titled: boolean): SweepNote[] {
  const told = head
    .map((line) => line.replace(/^\s*[#!%;/*]+\s*/, '').trim())
    .filter((line) => /[;\t,:=]/.test(line) && split(line, layout).length !== layout.count);
  const rest = head.length - (titled ? 1 : 0);
  if (rest <= 0) return [];
  const shown = told.slice(0, 4).map((line) => line.slice(0, 40).replace(/[;\t,]+/g, ' '));
  const what = shown.length > 0 ? ` (${shown.join(' · ')})` : '';
  return [{ lines: rest, says: `Lines before the numbers${what}.` }];
}

const left = (odd: readonly string[]): SweepNote[] =>
  odd.length === 0
    ? []
    : [{ lines: odd.length, says: `Lines that are no row of numbers are left out.` }];

function inWords({ separator, comma, count }: Layout, titles: unknown): string {
  const by = { '\t': 'tabs', ';': 'semicolons', ',': 'commas', ' ': 'spaces' }[separator];
  return `${count} columns between ${by}, decimal ${comma ? 'comma' : 'point'}, ${
    titles === null ? 'no titles' : 'with titles'
  }`;
}
