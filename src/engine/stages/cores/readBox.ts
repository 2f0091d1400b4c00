import { type Core, type CoreSize, coreSizes, cores, mixes } from '../../data/cores.ts';
import { twoHoleCores } from '../../data/twoHoleCores.ts';
import { ringFigures } from './ringFigures.ts';

/** One line of the box. */
export interface BoxLine {
  readonly line: number;
  readonly title: string;
  readonly pieces: number;
  /** A ring; null where it is none, or the line was not understood. */
  readonly core: Core | null;
  /** A core with two holes, by its key. */
  readonly block?: { readonly key: string; readonly al: number };
}

/** Lines that are read, and pieces that one line may hold. */
const MOST = 60;
const PIECES = 999;

const MU0_OVER_2PI = 2e-7;

/** Permeability above which a ring is taken for ferrite. */
export const FERRITE_FROM = 30;

/** Q taken for the core of an unmarked ring of low permeability: half that of a known mix. */
const UNMARKED_Q = 300;

/**
 * Takes the list of cores apart; a line that is not understood stays a line. Names stand once: a
 * second ring of one name gets a number.
 */
export function readBox(text: string | null): readonly BoxLine[] {
  const rings = new Map<string, number>();
  return (text ?? '')
    .split(/\r\n|\n|\r/)
    .map((line, i) => [line.trim(), i + 1] as const)
    .filter(([line]) => line !== '' && !/^[!#%]/.test(line))
    .slice(0, MOST)
    .map(([line, number]) => {
      const read = twoHoles(line, number) ?? known(line, number) ?? unknown(line, number);
      if (read.core === null || cores.includes(read.core)) return read;
      const before = rings.get(read.title) ?? 0;
      rings.set(read.title, before + 1);
      if (before === 0) return read;
      const title = `${read.title} (${before + 1})`;
      return { ...read, title, core: { ...read.core, title } };
    });
}

const holes = /(?<![a-z\d])BN\s?-?(\d{2})\s?[-/ ]\s?(\d{3,4})(?!\d)/i;
const name = /(?<![a-z\d])(F?T)\s?-?(\d{2,3})\s?[-/ ]\s?(\d{1,3})(?![\d.])/i;

/** A core with two holes, by its name. */
function twoHoles(line: string, number: number): BoxLine | null {
  const found = holes.exec(line);
  const block = twoHoleCores.find(({ key }) => key === `BN-${found?.[1]}-${found?.[2]}`);
  if (!found || !block) return null;
  const rest = `${line.slice(0, found.index)} ${line.slice(found.index + found[0].length)}`;
  return { line: number, title: block.title, pieces: piecesIn(rest), core: null, block };
}

/** A core of the table, by its name. */
function known(line: string, number: number): BoxLine | null {
  const found = name.exec(line);
  if (!found) return null;
  const [all, family = '', across = '', mix = ''] = found;
  const older = /\bold(er)?\b/i.test(line) ? '-older' : '';
  const key = `${family.toUpperCase()}${across}-${mix}`;
  const core =
    cores.find((one) => one.key === `${key}${older}`) ?? cores.find((one) => one.key === key);
  const rest = `${line.slice(0, found.index)} ${line.slice(found.index + all.length)}`;
  // An A_L beside a name is a measured one: it goes before the table's.
  const { al } = ringFigures(line);
  const size = coreSizes[`${family.toUpperCase()}${across}` as keyof typeof coreSizes];
  if (al !== null && size) {
    return {
      line: number,
      title: `${key}, measured`,
      pieces: piecesIn(rest),
      core: ringOf(number, `${key}, measured`, size, al),
    };
  }
  return core ? { line: number, title: core.title, pieces: piecesIn(rest), core } : null;
}

/** `x5`, `5 x`, `5 pieces`, `: 5`; one where none are said. */
function piecesIn(text: string): number {
  const found =
    /[x×*]\s*(\d{1,3})(?![\d.,])/i.exec(text) ??
    /(?<![\d.,])(\d{1,3})\s*(?:[x×*]|pcs?\b|pieces?\b|off\b)/i.exec(text) ??
    /^[\s:,;=–-]*(\d{1,3})[\s:,;=–-]*$/.exec(text.replace(/[a-z]+/gi, ' '));
  return Math.max(1, Math.min(PIECES, Number(found?.[1] ?? 1)));
}

/** A ring by its dimensions and its inductance factor. */
function unknown(line: string, number: number): BoxLine {
  const { outer, inner, height, al, rest } = ringFigures(line);
  const title = (rest.replace(/[\s,;:]+$/, '').replace(/\s+/g, ' ') || 'unmarked ring').slice(
    0,
    40,
  );
  const sound =
    al !== null &&
    outer !== null &&
    inner !== null &&
    height !== null &&
    outer > inner &&
    outer < 0.2 &&
    inner > 0.5e-3 &&
    height > 0.2e-3 &&
    height < 0.2;
  if (!sound) return { line: number, title: line.slice(0, 40), pieces: 1, core: null };
  const named = title
    .replace(/[\s,;:]+(?=x?\s*\d+\s*$)/i, ' ')
    .replace(/\s*(?:[x×*]\s*\d+|\d+\s*[x×*]|\d+\s*(?:pcs?|pieces?))\s*/i, ' ')
    .trim();
  const size = {
    outer,
    inner,
    height,
    path: (Math.PI * (outer + inner)) / 2,
    area: ((outer - inner) / 2) * height,
  };
  return {
    line: number,
    title: named || 'unmarked ring',
    pieces: piecesIn(rest),
    core: ringOf(number, named || 'unmarked ring', size, al),
  };
}

/** A ring of which only dimensions and A_L are known. */
function ringOf(number: number, title: string, size: CoreSize, al: number): Core {
  const mu = permeabilityOf(al, size.outer, size.inner, size.height);
  const kind = mu < FERRITE_FROM ? { ...mixes[2], coreQ: UNMARKED_Q } : mixes[43];
  return {
    key: `box${number}`,
    title,
    size,
    mix: { ...kind, title: 'unmarked', permeability: mu, tolerance: 0.05 },
    al,
    generation: null,
    source: 'measured by the user',
    year: null,
  };
}

/**
 * Permeability of a toroid of rectangular section: A_L·2π/(μ₀·h·ln(OD/ID)).
 *
 * @param al H, @param outer, inner, height m
 */
export const permeabilityOf = (al: number, outer: number, inner: number, height: number): number =>
  al / (MU0_OVER_2PI * height * Math.log(outer / inner));
