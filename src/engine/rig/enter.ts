import type { Choice, Count, InputField, Quantity } from '../fields/kinds.ts';
import type { Problem } from '../fields/stage.ts';
import { outOfRange } from '../quantity/outOfRange.ts';
import { parse, type Reading } from '../quantity/parse.ts';
import type { Unit } from '../quantity/units.ts';
import type { Entry } from './document.ts';
import type { WorkedInput } from './worked.ts';

/** Reads text as a quantity of a unit; `across` is the resistance in which volts of power are meant. */
export type Reader = (text: string, unit: Unit, options: { across?: number }) => Reading;

/** Understands one entry, or takes the field's default where nothing was said. */
export function enter(
  path: string,
  field: InputField,
  entry: Entry | undefined,
  across: number | undefined,
  read: Reader = parse,
): WorkedInput {
  const text = entry?.text;
  if (text === undefined || text.trim() === '') {
    return { text, value: field.default ?? null, origin: 'typical', wrong: false };
  }
  const origin = entry?.from ?? 'typed';
  const wrong = (says: string): WorkedInput => {
    const problem: Problem = { field: path, weight: 'stops', says };
    return { text, value: null, origin, wrong: true, problem };
  };
  if (field.kind === 'choice') {
    return text in field.options
      ? { text, value: text, origin, wrong: false }
      : wrong(`“${text}” is none of: ${Object.values((field as Choice).options).join(', ')}.`);
  }
  if (field.kind === 'pasted') {
    return text.length <= field.longest
      ? { text, value: text, origin, wrong: false }
      : wrong(`${field.label}: ${text.length} characters are too many, ${field.longest} are kept.`);
  }
  const unit = field.kind === 'count' ? '1' : field.unit;
  const reading = read(text, unit, across === undefined ? {} : { across });
  if (reading.kind === 'wrong') return wrong(reading.says);
  if (reading.kind === 'blank') {
    return { text, value: field.default ?? null, origin: 'typical', wrong: false };
  }
  if (reading.kind === 'expression') return wrong('One moment: this sum is being read.');
  const off = misfit(field, reading.value);
  if (off !== null) return wrong(off);
  return {
    text,
    value: reading.value,
    origin,
    wrong: false,
    ...(reading.note === undefined ? {} : { note: reading.note }),
  };
}

/** Why a number does not fit its field, with the range in the field's own notation; null if it does. */
function misfit(field: Quantity | Count, value: number): string | null {
  if (field.kind === 'count' && !Number.isInteger(value)) {
    return `${field.label} is a whole number.`;
  }
  const { label, range } = field;
  if (!range) return null;
  if (field.kind === 'count') return outOfRange({ label, range, unit: '1' }, value);
  const { unit, digits } = field;
  return outOfRange({ label, range, unit, ...(digits === undefined ? {} : { digits }) }, value);
}
