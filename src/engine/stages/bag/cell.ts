import { format } from '../../quantity/format.ts';
import { parse, type Reading } from '../../quantity/parse.ts';
import { tidy } from '../../quantity/tidy.ts';
import type { Unit } from '../../quantity/units.ts';

/** What may be given of a crystal of the bag. */
export type Figure = 'fs' | 'lm' | 'rm' | 'c0' | 'cm' | 'qu';

/** How a column of figures is read. */
interface Kind {
  readonly unit: Unit;
  /** What a crystal can have, in SI units. */
  readonly range: readonly [number, number];
  /** Sizes that a number without a unit may be meant in, the likeliest first. */
  readonly scales: readonly number[];
  readonly name: string;
}

export const kinds: Readonly<Record<Figure, Kind>> = {
  fs: { unit: 'Hz', range: [1e6, 40e6], scales: [1, 1e3, 1e6], name: 'series resonance' },
  lm: { unit: 'H', range: [1e-4, 10], scales: [1e-3, 1], name: 'Lm' },
  rm: { unit: 'Ω', range: [0.1, 2000], scales: [1], name: 'Rm' },
  c0: { unit: 'F', range: [1e-13, 30e-12], scales: [1e-12, 1], name: 'C0' },
  cm: { unit: 'F', range: [1e-16, 5e-13], scales: [1e-15, 1e-12, 1], name: 'Cm' },
  qu: { unit: '1', range: [500, 5e6], scales: [1, 1e3], name: 'Qu' },
};

/** A figure of one cell, in SI units; or null with what is to be said of it. */
export interface Cell {
  readonly value: number | null;
  /** Empty where there is nothing to say. */
  readonly says: string;
}

const blank: Cell = { value: null, says: '' };

/**
 * Reads one cell. A number with a unit is taken at its word; a bare number is taken in the unit of
 * the heading, and without one in the unit in which a crystal can have it: 7198.612 as a frequency
 * is kilohertz. 7,198 may be 7.198 or 7198: where both come to the same, that is it.
 *
 * @param scale what one of a bare number is, in SI units, by the heading; null where it says nothing
 */
export function readCell(text: string, figure: Figure, scale: number | null): Cell {
  const clean = /^[\w.,+-]*$/.test(text) ? text : tidy(text);
  if (/^[-–—.?*/]*$|^(n\/?a|nan|none|inf)$/i.test(clean)) return blank;
  const { unit, range, scales, name } = kinds[figure];
  const isBare = /^[+\d.,' ]+(e[+-]?\d+)?$/i.test(clean);
  const tries = isBare ? commaWays(clean) : [clean];
  const within = (value: number) => value >= range[0] && value <= range[1];
  const found = new Set<number>();
  let outside: number | null = null;
  for (const way of tries) {
    // Plain digits, which most lists consist of, need no careful reader.
    const read: Reading = /^\d+([.]\d+)?$/.test(way)
      ? { kind: 'value', value: Number(way) }
      : parse(way, isBare ? '1' : unit);
    if (read.kind !== 'value') continue;
    const values = isBare
      ? (scale === null ? scales : [scale]).map((s) => read.value * s)
      : [read.value];
    const fits = values.find(within);
    if (fits === undefined) outside ??= values[0] ?? null;
    else found.add(Number(fits.toPrecision(15)));
  }
  const [value, other] = found;
  if (value !== undefined && other === undefined) return { value, says: '' };
  if (value !== undefined)
    return { value: null, says: `${name} “${clean}” can be read in two ways` };
  if (outside !== null) {
    return { value: null, says: `${name} ${format(outside, unit, 4)} is none of a crystal` };
  }
  return { value: null, says: `${name} “${shortened(clean)}” is not understood` };
}

/** Whether a cell can be the frequency of a crystal. */
export const isFrequency = (text: string, scale: number | null = null): boolean =>
  readCell(text, 'fs', scale).value !== null;

/** 7,198 as decimals and as thousands; anything else as it is. */
function commaWays(text: string): readonly string[] {
  if (/^[1-9]\d{0,2},\d{3}$/.test(text)) return [text.replace(',', '.'), text.replace(',', '')];
  return [/^\d+,\d+$/.test(text) ? text.replace(',', '.') : text];
}

export const shortened = (text: string): string =>
  text.length > 30 ? `${text.slice(0, 29)}…` : text;
