import { alternatives } from './alternatives.ts';
import { type Pieces, pieces } from './pieces.ts';
import { type Refusal, type Value, valueOr, wrong } from './reading.ts';
import { spelled, suffix, unitSpelled, type Worth } from './suffix.ts';
import { type Unit, unitRow } from './units.ts';

/**
 * Reads one number with the letters that belong to it: 4u7, 470p, 8R2, 7M16, 39 pF, 12 V, 37 dBm,
 * 25 °C.
 *
 * @param text tidied (see `tidy`)
 * @param across Ω in which volts stand for power
 * @return null if the text has another shape
 */
export function literal(text: string, unit: Unit, across?: number): Value | Refusal | null {
  const parts = pieces(text);
  if (!parts) return null;
  const { sign, number, run, power, letters } = parts;
  if (/^(pi|π)/.test(letters)) return null;
  const own = suffix(letters, unit);
  // Operators or digits among the letters? Unless that is how a unit is spelled, it is no literal.
  if (!own && /[-*/^()|+\d]/.test(letters) && !unitSpelled(letters)) return null;

  if (number.kind === 'none') return wrong(`“${run}” can't be read as one number.`);
  if (number.kind === 'question') {
    const [first, second] = [number.first, number.second].map(
      (one) => `${sign}${one}${letters && ` ${letters}`}`,
    );
    return wrong(`${text}: did you mean ${first} or ${second}? Write ${first} or ${second}.`);
  }
  if (!own) return standIn(parts, sign + number.text, unit, text, across);

  const value = scaled(sign + number.text, power, own) + unitRow(unit).zero;
  return valueOr(value, text, unit === 'F' ? capacitorCode(text) : undefined);
}

/** The number shifted by its powers of ten as text, so that 4.7 µ is the double nearest 4.7e-6. */
export const scaled = (number: string, power: number, worth: Worth): number =>
  Number(`${number}e${power + worth.power}`) * worth.factor;

/** "this field is in Hz", for messages. */
export function fieldIn(unit: Unit): string {
  const { shown } = unitRow(unit);
  return shown === '' ? 'this field takes a plain number' : `this field is in ${shown}`;
}

/** Units that may stand in, then units of another kind, then letters that nobody knows. */
function standIn(
  { power, letters }: Pieces,
  number: string,
  unit: Unit,
  text: string,
  across: number | undefined,
): Value | Refusal {
  for (const alternative of alternatives(unit, across)) {
    const worth = spelled(letters, alternative.unit);
    if (!worth) continue;
    if (!alternative.convert) return wrong(alternative.ask?.(number) ?? `${text} is not clear.`);
    const typed = scaled(number, power, worth);
    if (alternative.unit === 'W' && typed < 0) return wrong('A power is not negative.');
    if (unit === 'dBm' && typed === 0) return wrong('No power has no level in dBm.');
    return valueOr(alternative.convert(typed), text, alternative.note);
  }
  const kind = unitSpelled(letters);
  return wrong(
    kind === null
      ? `“${letters}” is not known here; ${fieldIn(unit)}. Write for instance ${unitRow(unit).example}.`
      : `${letters} is ${unitRow(kind).kind}; ${fieldIn(unit)}.`,
  );
}

/** Three digits on a ceramic capacitor are a code (IEC 60062), but three digits typed are a number. */
function capacitorCode(text: string): string | undefined {
  const code = /^([1-9]\d)([0-6])$/.exec(text);
  if (!code) return undefined;
  return `${text} printed on a capacitor means ${code[1]}${'0'.repeat(Number(code[2]))} pF`;
}
