import { combine } from './combine.ts';
import { literal } from './literal.ts';
import { type Reading, wrong } from './reading.ts';
import { tidy } from './tidy.ts';
import { type Unit, unitRow } from './units.ts';

export type { Reading } from './reading.ts';

/** Longest text that is read at all. */
export const longest = 200;

/**
 * Understands what a person typed into a field in `unit`: engineering literals in every style in
 * use, their sums and parallels. Never throws; a value is always finite.
 *
 * @param text as typed
 * @param unit the field's unit, which a number without letters takes
 * @param options.across Ω in which volts stand for power (50 Ω unless given)
 * @return the value in the unit of storage, or what to tell the person
 */
export function parse(text: string, unit: Unit, options: { across?: number } = {}): Reading {
  if (text.length > longest) return wrong(`That is too long: at most ${longest} characters.`);
  const clean = tidy(text);
  if (clean === '') return { kind: 'blank' };
  const read = literal(clean, unit, options.across) ?? combine(clean, unit);
  if (read) return read;
  if (looksLikeExpression(clean)) return { kind: 'expression' };
  return wrong(`“${text.trim()}” is not understood. Write for instance ${unitRow(unit).example}.`);
}

/** Has it operators, balanced brackets, and only characters an expression may have? */
function looksLikeExpression(text: string): boolean {
  if (!/[-+*/^(|]|pi|π/.test(text.slice(1)) && !/^(\(|pi$|π$)/.test(text)) return false;
  if (!/\d|pi|π/.test(text) || !/^[\p{L}\d .,+\-*/^()|%°²³_]+$/u.test(text)) return false;
  let depth = 0;
  for (const character of text) {
    if (character === '(') depth += 1;
    if (character === ')') depth -= 1;
    if (depth < 0) return false;
  }
  return depth === 0;
}
