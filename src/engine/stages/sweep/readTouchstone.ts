import {
  columnsOf,
  type Holds,
  linesOf,
  type SweepColumn,
  type SweepNote,
  type SweepText,
} from './sweepText.ts';
import { type TouchstoneHead, touchstoneHead, touchstoneOption } from './touchstoneHead.ts';

/** Has the text an option line, a version, or comments over rows of 3, 5 or 9 numbers? */
export function isTouchstone(text: string): boolean {
  const lines = linesOf(text);
  if (lines.some((line) => touchstoneOption(line) !== null || /^\s*\[version\]/i.test(line))) {
    return true;
  }
  if (!lines.some((line) => line.trimStart().startsWith('!'))) return false;
  const first = lines.map(numbersOf).find((row) => row !== null && row.length > 0);
  return first !== undefined && first !== null && [3, 5, 9].includes(first.length);
}

/**
 * Reads a Touchstone file of one or two ports, forgiving what real files do.
 *
 * Source: Touchstone File Format Specification, Rev. 1.1 (EIA/IBIS Open Forum, 2002) and Version 2.0
 * (IBIS Open Forum, 2009). Departures on purpose: a row of five numbers is S11 and S21 only; S12 or
 * S22 that are zero in every row were not measured.
 */
export function readTouchstone(text: string): SweepText {
  const notes: SweepNote[] = [];
  const say = (lines: number, says: string) => notes.push({ lines, says });
  const head = touchstoneHead(text, say);
  const { rows, wrong, noise } = rowsOf(head.data, head.ports);
  if (noise > 0) say(noise, 'Noise figures after the network data are left out.');
  if (wrong > 0) say(wrong, 'Lines that are no row of numbers are left out.');
  return {
    format: inWords(head, rows[0]?.length ?? 0),
    columns: rows.length === 0 ? [] : columns(head, rows, say),
    reference: head.reference,
    unitSupposed: head.unitSupposed,
    notes,
  };
}

/** Rows of frequency and pairs; a line of pairs alone continues the one before it. */
function rowsOf(lines: readonly string[], ports: number | null) {
  const found: number[][] = [];
  let wrong = 0;
  for (const line of lines) {
    const numbers = numbersOf(line);
    if (numbers === null) wrong += 1;
    else if (numbers.length % 2 === 1) found.push(numbers);
    else if (numbers.length > 0) found.at(-1)?.push(...numbers);
  }
  const width = ports === 1 ? 3 : (found[0]?.length ?? 0);
  // Noise figures of a two-port follow in rows of five.
  const end = width < 7 ? -1 : found.findIndex(({ length }) => length === 5);
  const data = end < 0 ? found : found.slice(0, end);
  const rows = [3, 5, 7, 9].includes(width) ? data.filter(({ length }) => length === width) : [];
  return { rows, wrong: wrong + data.length - rows.length, noise: found.length - data.length };
}

/** The numbers of a line, comment cut off; null where something in it is none. */
function numbersOf(line: string): number[] | null {
  let body = line.replace(/!.*$/, '').trim();
  if (body === '' || body.startsWith('#') || body.startsWith('[')) return [];
  if (/\d,\d/.test(body) && !body.includes('.') && /\s/.test(body)) body = body.replace(/,/g, '.');
  const numbers = body.split(/[\s,;]+/).map(oneNumber);
  return numbers.some((x) => x === null) ? null : (numbers as number[]);
}

function oneNumber(word: string): number | null {
  if (/^[-+]?(inf|infinity|nan)$/i.test(word)) return Number.NaN;
  if (!/^[-+]?(\d+\.?\d*|\.\d+)([edED][-+]?\d+)?$/.test(word)) return null;
  const x = Number(word.replace(/d/i, 'e'));
  return Number.isFinite(x) ? x : Number.NaN;
}

type Say = (lines: number, says: string) => void;

/** What stands after the frequency, by the number of pairs. */
function parameters(pairs: number, order: TouchstoneHead['order']): string[] {
  if (pairs === 1) return ['S11'];
  if (pairs === 2) return ['S11', 'S21'];
  if (pairs === 3) return ['S11', 'S21', 'S22'];
  return order === '12_21' ? ['S11', 'S12', 'S21', 'S22'] : ['S11', 'S21', 'S12', 'S22'];
}

const pairs: Record<
  TouchstoneHead['format'],
  readonly [string, string, Holds, string, string, Holds]
> = {
  MA: ['magnitude', '', 'voltage', 'angle', '°', 'angle'],
  DB: ['in dB', 'dB', 'level', 'angle', '°', 'angle'],
  RI: ['real', '', 'real', 'imaginary', '', 'imaginary'],
};

function columns(head: TouchstoneHead, rows: readonly number[][], say: Say): SweepColumn[] {
  const width = rows[0]?.length ?? 0;
  const [frequency, ...values] = columnsOf(rows, width);
  if (frequency === undefined) return [];
  const found: SweepColumn[] = [
    { name: 'Frequency', unit: head.unit, holds: 'frequency', values: frequency },
  ];
  const [a, ua, ha, b, ub, hb] = pairs[head.format];
  const unmeasured: string[] = [];
  parameters((width - 1) / 2, head.order).forEach((name, k) => {
    const [first, second] = [values[2 * k], values[2 * k + 1]];
    if (first === undefined || second === undefined) return;
    const none = first.every((x) => x === 0) && second.every((x) => x === 0);
    if (none) unmeasured.push(name);
    const back = name === 'S11' || name === 'S22' ? ({ reflection: true } as const) : {};
    found.push(
      { name: `${name} ${a}`, unit: ua, holds: none ? 'nothing' : ha, values: first, ...back },
      { name: `${name} ${b}`, unit: ub, holds: none ? 'nothing' : hb, values: second, ...back },
    );
  });
  if (unmeasured.length > 0) {
    say(
      rows.length,
      `${unmeasured.join(' and ')} ${unmeasured.length > 1 ? 'are' : 'is'} zero in every row: not measured.`,
    );
  }
  return found;
}

function inWords({ version, format }: TouchstoneHead, width: number): string {
  const ports = width === 0 ? 'no rows' : width === 3 ? 'one port' : 'two ports';
  const how = { MA: 'magnitude and angle', DB: 'dB and angle', RI: 'real and imaginary' }[format];
  return `Touchstone version ${version}, ${ports}, ${how}`;
}
