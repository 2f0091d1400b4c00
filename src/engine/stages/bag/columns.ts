import { parse } from '../../quantity/parse.ts';
import { alikeByPlace } from './alike.ts';
import { type Figure, isFrequency, kinds, readCell } from './cell.ts';
import { type Line, sampled } from './splitLines.ts';

/** Which cell of a line is what. */
export interface Columns {
  /** Place of each figure, and what one of a bare number in it is, by the heading. */
  readonly at: Readonly<
    Partial<Record<Figure, { readonly place: number; readonly scale: number | null }>>
  >;
  /** Place of the label; null where there is none. */
  readonly label: number | null;
  /** Lines up to this number are the heading. */
  readonly headingEnds: number;
  /** Names of columns that nothing is made of. */
  readonly unused: readonly string[];
}

/** Names by which a column is known, in small letters and without spaces. */
const names: Readonly<Record<Figure, RegExp>> = {
  fs: /^(fs|fr|f|f0|freq|frequency|frequenz|series|seriesresonance|resonance|fseries|s21peak|peak)$/,
  lm: /^(lm|l|l1|ls|motionalinductance|inductance)$/,
  rm: /^(rm|r|r1|rs|esr|motionalresistance|resistance)$/,
  c0: /^(c0|co|cp|holder|holdercapacitance|shuntcapacitance|shunt)$/,
  cm: /^(cm|c|c1|cs|motionalcapacitance)$/,
  qu: /^(q|qu|qs|quality|unloadedq)$/,
};
const labels = /^(label|name|no|nr|num|number|crystal|xtal|id|x|#|mark|piece|item|pos)$/;

/** Finds out what stands where: by a heading if there is one, else by what the cells can be. */
export function columnsOf(lines: readonly Line[]): Columns {
  const heading = headingOf(lines);
  return heading === null ? byPlace(lines) : named(heading);
}

/** The line that names the columns: before the first crystal, with the frequency among the names. */
function headingOf(lines: readonly Line[]): Line | null {
  for (const line of lines.slice(0, 12)) {
    const figures = line.cells.map(figureNamed);
    if (figures.includes('fs')) return line;
    if (line.cells.some((cell) => isFrequency(cell))) return null;
  }
  return null;
}

function named(heading: Line): Columns {
  const at: Partial<Record<Figure, { place: number; scale: number | null }>> = {};
  let label: number | null = null;
  const unused: string[] = [];
  for (const [place, cell] of heading.cells.entries()) {
    const figure = figureNamed(cell);
    if (figure !== null && at[figure] === undefined)
      at[figure] = { place, scale: scaleNamed(cell, figure) };
    else if (label === null && labels.test(bareName(cell))) label = place;
    else if (cell !== '') unused.push(cell);
  }
  // A first column without a known name, left of the frequency, can only be the label.
  const [first] = heading.cells;
  if (label === null && (at.fs?.place ?? 0) > 0 && figureNamed(first ?? '') === null) {
    label = 0;
    if (first !== undefined && unused[0] === first) unused.shift();
  }
  return { at, label, headingEnds: heading.number, unused };
}

const isWord = (cell: string) => /\p{L}/u.test(cell) && readCell(cell, 'lm', null).value === null;

const order: readonly Figure[] = ['lm', 'rm', 'c0'];

/** Label, fs, Lm, Rm, C0: the frequency is where most lines have one. */
function byPlace(lines: readonly Line[]): Columns {
  const held = alikeByPlace(sampled(lines).map(({ cells }) => cells));
  const widest = held.length;
  const place = held.indexOf(Math.max(0, ...held));
  const fs = { fs: { place: Math.max(0, place), scale: null } };
  // Words after the frequency, with none before it, are the labels.
  const words = sampled(lines).filter(({ cells }) => isWord(cells[place + 1] ?? ''));
  const labelAfter = place === 0 && 2 * words.length > sampled(lines).length;
  const from = place + 1 + (labelAfter ? 1 : 0);
  const rest = order.filter((_, i) => from + i < widest);
  const at = Object.fromEntries(
    rest.map((figure, i) => [figure, { place: from + i, scale: null }]),
  );
  const label = labelAfter ? place + 1 : place > 0 ? 0 : null;
  return { at: { ...fs, ...at }, label, headingEnds: 0, unused: [] };
}

function figureNamed(cell: string): Figure | null {
  const name = bareName(cell);
  const all = Object.keys(names) as Figure[];
  return all.find((figure) => names[figure].test(name)) ?? (/^[kM]?Hz$/i.test(name) ? 'fs' : null);
}

/** A name without its unit: "Lm (mH)", "C0 [pF]", "fs/Hz", "freq_MHz". */
const bareName = (cell: string) =>
  cell
    .replace(/[([{/].*$|[,;_ ]+(in )?[fpnuµmkM]?(Hz|H|F|Ω|ohms?)\s*$/i, '')
    .replace(/[\s_.:-]/g, '')
    .toLowerCase();

/** What one is, by the unit that a heading gives. */
function scaleNamed(cell: string, figure: Figure): number | null {
  const unit = /([fpnuµmkMG]?(?:Hz|H|F|Ω|ohms?|Ohms?))\s*[)\]}]?\s*$/i.exec(cell)?.[1];
  if (unit === undefined) return null;
  const read = parse(`1 ${unit}`, kinds[figure].unit);
  return read.kind === 'value' ? read.value : null;
}
