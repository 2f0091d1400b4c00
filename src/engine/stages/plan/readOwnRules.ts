import { format } from '../../quantity/format.ts';
import { parse } from '../../quantity/parse.ts';
import { tidy } from '../../quantity/tidy.ts';
import type { Unit } from '../../quantity/units.ts';

/** Most lines of one set. */
export const MOST_LINES = 40;

/** Where lines without an upper end reach to: as far as any regulation goes, Hz. */
const HIGHEST = 300e9;

/** A line of the user's own set of limits; one that was not understood has no frequencies. */
export interface OwnRow {
  readonly line: number;
  /** Hz */
  readonly from: number | null;
  readonly to: number | null;
  /** dB below peak envelope power. */
  readonly below: number | null;
  /** dBm */
  readonly absolute: number | null;
  /** Where both are given. */
  readonly whichever: 'less' | 'more' | null;
  /** What is to be said of the line; empty where nothing is. */
  readonly note: string;
}

/**
 * Understands lines such as “1.7 – 35 MHz: 40 dB or −36 dBm”, “above 50 MHz 60 dB”, “50 dB”.
 *
 * Every line that is neither blank nor a remark comes back as a row. Frequencies without a unit are
 * megahertz; “or” means that the milder of two limits is enough, “and” that both hold.
 */
export function readOwnRules(text: string): { rows: OwnRow[]; tooMany: number } {
  const lines = text
    .split(/\r\n|\n|\r/)
    .map((line, i) => ({ line: i + 1, text: tidy(line) }))
    .filter((one) => !/^\s*($|[!%#]|\/\/)/.test(one.text));
  return {
    rows: lines.slice(0, MOST_LINES).map(readLine),
    tooMany: Math.max(0, lines.length - MOST_LINES),
  };
}

const number = '[-+]?\\d+(?:[.,]\\d+)?';

function readLine({ line, text }: { line: number; text: string }): OwnRow {
  const refuse = (note: string): OwnRow => ({ ...blank, line, note });
  const logarithm = new RegExp(`(${number}) ?(?:dB)? ?\\+ ?10 ?log`, 'i').exec(text);
  if (logarithm) {
    const level = 30 - Number(logarithm[1]?.replace(',', '.'));
    return refuse(
      `“${logarithm[1]} + 10 log” of the power is the same as the level ${format(level, 'dBm', 3)}: write that`,
    );
  }
  let rest = text.replace(
    /\bbelow( the)? (pep|peak|carrier|mean|fundamental)\S*( envelope)?( power)?/gi,
    ' ',
  );
  const take = (pattern: RegExp): string | null => {
    const found = pattern.exec(rest);
    if (found) rest = rest.replace(found[0], ' ; ');
    return found?.[1] ?? null;
  };
  const dBm = take(new RegExp(`(${number}) ?dBm\\b`, 'i'));
  const watts = dBm === null ? take(/(\d+(?:[.,]\d+)? ?[nuµm]?W)\b/) : null;
  const down = take(new RegExp(`(${number}) ?dBc?\\b`, 'i'));
  if (dBm === null && watts === null && down === null) {
    return refuse(`“${shortened(text)}” has no limit: write 43 dB, or a level such as −36 dBm`);
  }
  const absolute = dBm === null ? levelOf(watts) : figure(dBm, 'dBm');
  const below = down === null ? null : figure(down, 'dB');
  if (typeof absolute === 'string') return refuse(absolute);
  if (typeof below === 'string') return refuse(below);
  if (below !== null && Math.abs(below) > 150)
    return refuse(`${down} dB is no limit: 0 to 150 dB will do`);
  if (absolute !== null && Math.abs(absolute) > 150)
    return refuse('a level lies between −150 and 150 dBm');
  const both = below !== null && absolute !== null;
  const whichever = both ? (/\b(and|both|more)\b/i.test(rest) ? 'more' : 'less') : null;
  const reach = frequencies(rest);
  if (typeof reach === 'string') return refuse(reach);
  return {
    line,
    ...reach,
    below: below === null ? null : Math.abs(below),
    absolute,
    whichever,
    note: '',
  };
}

const blank = { from: null, to: null, below: null, absolute: null, whichever: null } as const;

const filling =
  /\b(at least|limits?|whichever|asks?|is|are|the|less|more|milder|stricter|strict|or|and|both|all|any|everywhere|elsewhere|frequency|frequencies)\b|[:;=|]|(?<!\d),|,(?!\d)/gi;

/** The stretch that a line holds for, Hz; or what is wrong with it. */
function frequencies(text: string): { from: number; to: number } | string {
  const said = text.replace(filling, ' ').replace(/\s+/g, ' ').trim();
  if (said === '') return { from: 0, to: HIGHEST };
  const open = /^(above|over|from|>=?|below|under|up to|until|to|<=?) ?(\d\S*( ?[kMG]?Hz)?)$/i.exec(
    said,
  );
  if (open) {
    const edge = hertz(open[2] ?? '', 'MHz');
    if (typeof edge === 'string') return edge;
    const up = /^(above|over|from|>)/i.test(open[1] ?? '');
    return up ? { from: edge, to: HIGHEST } : { from: 0, to: edge };
  }
  const pair =
    /^(?:from |between )?(\d[^\s-]*( ?[kMG]?Hz)?) ?(?:-|to|\.\.\.?|…) ?(\d\S*( ?[kMG]?Hz)?)$/i.exec(
      said,
    );
  if (!pair)
    return `“${shortened(said)}” is no stretch of frequencies: write 30 – 1000 MHz, or above 30 MHz`;
  const unit = /[kMG]?Hz/i.exec(pair[3] ?? '')?.[0] ?? 'MHz';
  const to = hertz(pair[3] ?? '', 'MHz');
  const from = hertz(pair[1] ?? '', unit);
  if (typeof from === 'string') return from;
  if (typeof to === 'string') return to;
  return from <= to
    ? { from, to }
    : 'its frequencies run from high to low: write the lower one first';
}

/** A frequency; a number alone is taken in `unit`. */
function hertz(text: string, unit: string): number | string {
  return figure(/^[\d.,]+$/.test(text) ? `${text} ${unit}` : text, 'Hz');
}

function levelOf(watts: string | null): number | null | string {
  if (watts === null) return null;
  const value = figure(watts, 'W');
  return typeof value === 'string' ? value : 10 * Math.log10(Math.max(value, 1e-18) / 1e-3);
}

/** A number as the rest of the program reads it, or its words. */
function figure(text: string, unit: Unit): number | string {
  const read = parse(text, unit);
  if (read.kind === 'value') return read.value;
  return read.kind === 'wrong'
    ? read.says.replace(/\.$/, '')
    : `“${shortened(text)}” is not understood`;
}

const shortened = (text: string) => (text.length > 40 ? `${text.slice(0, 38)}…` : text);
