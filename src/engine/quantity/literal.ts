import { alternatives } from './alternatives.ts';
import { digits } from './digits.ts';
import { type Reading, valueOr, wrong } from './reading.ts';
import { prefixOf, spelled, suffix, unitSpelled, type Worth } from './suffix.ts';
import { type Unit, unitRow } from './units.ts';

/** A literal read: a value in the unit of storage, a refusal, or null if it has another shape. */
export type Literal = Exclude<Reading, { kind: 'blank' | 'expression' }> | null;

const run = /^([+-]?) ?([.,]?\d+(?:[.,' ]\d+)*[.,]?)(?:[eE]([+-]?\d{1,4})(?![\d.,]))? ?(.*)$/u;
const letterAsPoint = /^([+-]?)(\d*)(\p{L})(\d[\d']*) ?(\D*)$/u;

/**
 * Reads one number with the letters that belong to it: 4u7, 470p, 8R2, 7M16, 39 pF, 12 V, 37 dBm,
 * 25 °C.
 *
 * @param text tidied (see `tidy`)
 * @param across Ω in which volts stand for power
 */
export function literal(text: string, unit: Unit, across?: number): Literal {
  const infix = letterAsPoint.exec(text);
  if (infix) {
    const [, sign = '', whole = '', letter = '', fraction = '', rest = ''] = infix;
    const worth = pointWorth(letter, rest.replace(/ /g, ''), unit);
    if (worth) {
      const number = `${sign}${whole || '0'}.${fraction.replace(/'/g, '')}`;
      return finish(number, 0, worth, unit, text);
    }
  }

  const parts = run.exec(text);
  if (!parts) return null;
  const [, sign = '', marks = '', exponent = '0', tail = ''] = parts;
  const letters = tail.replace(/ /g, '');
  // Operators and digits among the letters? Unless that is how a unit is spelled, it is no literal.
  if (/[*/^()|+\d]/.test(letters) && !suffix(letters, unit) && !unitSpelled(letters)) return null;

  const number = digits(marks);
  if (number.kind === 'none') return wrong(`“${marks}” can't be read as one number.`);
  if (number.kind === 'question') {
    const gap = tail === '' ? '' : ` ${tail}`;
    const [first, second] = [`${sign}${number.first}${gap}`, `${sign}${number.second}${gap}`];
    return wrong(`${text}: did you mean ${first} or ${second}? Write ${first} or ${second}.`);
  }

  const power = Number(exponent);
  const own = suffix(letters, unit);
  if (own) return finish(sign + number.text, power, own, unit, text);
  return other(sign + number.text, power, letters, unit, text, across);
}

/** Units that may stand in, then units of another kind, then letters nobody knows. */
function other(
  number: string,
  power: number,
  letters: string,
  unit: Unit,
  text: string,
  across: number | undefined,
): Literal {
  for (const alternative of alternatives(unit, across)) {
    const worth = spelled(letters, alternative.unit);
    if (!worth) continue;
    if (!alternative.convert) return wrong(alternative.ask?.(number) ?? `${text} is not clear.`);
    const typed = scaled(number, power, worth);
    if (unitRow(alternative.unit).kind === 'a power' && !(typed > 0) && unit === 'dBm') {
      return wrong('No power has no level in dBm.');
    }
    if (alternative.unit === 'W' && typed < 0) return wrong('A power is not negative.');
    return literalValue(alternative.convert(typed), text, alternative.note);
  }
  const row = unitRow(unit);
  const field = row.shown === '' ? 'takes a plain number' : `is in ${row.shown}`;
  const kind = unitSpelled(letters);
  return wrong(
    kind === null
      ? `“${letters}” is not known here: this field ${field}. Write for instance ${row.example}.`
      : `${letters} is ${unitRow(kind).kind}; this field ${field}.`,
  );
}

function finish(number: string, power: number, worth: Worth, unit: Unit, text: string): Literal {
  const value = scaled(number, power, worth) + unitRow(unit).zero;
  // Three digits on a ceramic capacitor are a code, but three digits typed are a number.
  const code = unit === 'F' ? /^([1-9]\d)([0-6])$/.exec(text) : null;
  if (!code) return literalValue(value, text);
  const picofarads = `${code[1]}${'0'.repeat(Number(code[2]))}`;
  return literalValue(value, text, `${text} printed on a capacitor means ${picofarads} pF`);
}

function literalValue(value: number, text: string, note?: string): Literal {
  const reading = valueOr(value, text, note);
  return reading.kind === 'value' || reading.kind === 'wrong' ? reading : null;
}

const scaled = (number: string, power: number, worth: Worth): number =>
  Number(`${number}e${power + worth.power}`) * worth.factor;

/** A letter standing where the point would: a prefix (4u7), or the unit itself (8R2, 12V5). */
function pointWorth(letter: string, rest: string, unit: Unit): Worth | null {
  const { prefixed, spellings } = unitRow(unit);
  const itself = prefixed.includes(letter) || letter === unit;
  if (itself && rest === '' && spellings[letter] !== undefined) return suffix(letter, unit);
  if (unit === 'Ω' && letter === 'r' && rest === '') return suffix('R', unit);
  if (prefixOf(letter, unit) === null) return null;
  return suffix(letter + rest, unit);
}
