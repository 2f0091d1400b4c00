import { parse } from '../../quantity/parse.ts';

/** What a line says of a ring; lengths in m, A_L in H. */
export interface RingFigures {
  readonly outer: number | null;
  readonly inner: number | null;
  readonly height: number | null;
  readonly al: number | null;
  /** What is left of the line: a name, a number of pieces. */
  readonly rest: string;
}

const number = '(\\d+(?:[.,]\\d+)?)';
const dimension = (names: string) =>
  new RegExp(`\\b(?:${names})\\s*[:=]?\\s*${number}\\s*(?:mm)?`, 'i');
const threes = new RegExp(`${number}\\s*[/x×]\\s*${number}\\s*[/x×]\\s*${number}\\s*(?:mm)?`, 'i');
const factor =
  /\bA_?L\s*[:=]?\s*(\d+(?:[.,]\d+)?)\s*([pnµμu]?)\s*H?\s*(\/\s*100)?(?:\s*(?:t|turns?))?/i;

/**
 * Reads `OD 12.7 ID 7.7 h 4.8, AL 4.9n` or `12.7/7.7/4.8 AL 49 µH/100`: millimetres; A_L with its
 * prefix, for one turn, or in µH for a hundred.
 */
export function ringFigures(line: string): RingFigures {
  let rest = line;
  const take = (pattern: RegExp): RegExpExecArray | null => {
    const found = pattern.exec(rest);
    if (found) rest = `${rest.slice(0, found.index)} ${rest.slice(found.index + found[0].length)}`;
    return found;
  };
  const al = alOf(take(factor));
  const all = take(threes);
  const outer = mm(all?.[1] ?? take(dimension('OD|outer|outside'))?.[1]);
  const inner = mm(all?.[2] ?? take(dimension('ID|inner|hole'))?.[1]);
  const height = mm(all?.[3] ?? take(dimension('HT|H|height|thick'))?.[1]);
  return { outer, inner, height, al, rest: rest.replace(/[,;:]+\s*(?=[,;:]|$)/g, ' ').trim() };
}

const mm = (text: string | undefined): number | null =>
  text === undefined ? null : Number(text.replace(',', '.')) * 1e-3;

/** A_L of one turn; a figure for a hundred turns is one ten-thousandth of that. */
function alOf(found: RegExpExecArray | null): number | null {
  if (!found) return null;
  const [, figure = '', prefix = '', hundred] = found;
  if (prefix === '') return null;
  const read = parse(`${figure.replace(',', '.')}${prefix}H`, 'H');
  if (read.kind !== 'value') return null;
  const al = hundred === undefined ? read.value : read.value / 1e4;
  return al > 1e-11 && al < 1e-3 ? al : null;
}
