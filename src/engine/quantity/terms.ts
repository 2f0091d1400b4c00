import { alternatives } from './alternatives.ts';
import { fieldIn, scaled } from './literal.ts';
import { pieces } from './pieces.ts';
import { type Refusal, wrong } from './reading.ts';
import { prefixOf, spelled, suffix, unitSpelled } from './suffix.ts';
import { type Unit, unitRow } from './units.ts';

/** One quantity in an expression. */
export interface Term {
  readonly value: number;
  /** The unit whose dimension it has; null for a number with a bare prefix, or none. */
  readonly unit: Unit | null;
  readonly written: 'bare' | 'prefixed' | 'unit';
}

/** An expression with each quantity replaced by its place in the list of terms. */
export interface Terms {
  readonly kind: 'terms';
  readonly source: string;
  readonly terms: readonly Term[];
}

/** Functions that an entered expression may use, by the name in mathjs. */
export const functions = {
  sqrt: 'sqrt',
  abs: 'abs',
  exp: 'exp',
  ln: 'log',
  log10: 'log10',
  log2: 'log2',
  lg: 'log10',
} as const;

const numberToken =
  /(?:\d+(?! ?\p{L}\p{L})(?![eE])\p{L}\d+|(?:\d+(?:[.,' ]\d+)*[.,]?|[.,]\d+)(?:[eE][+-]?\d{1,4}(?![\p{L}\d]))?)(?: ?(?!(?:pi|π|sqrt|abs|exp|ln|lg|log\d*)(?![\p{L}]))[\p{L}°%]+[23]?(?!\d))?/uy;
const nameToken = /[\p{L}°%_]+\d*/uy;
const operatorToken = /\|\||\/\/|\*\*|[-+*/^() ]/y;

/**
 * Cuts an expression into quantities, names and operators, so that the parser of formulas sees
 * only whole numbers (places in `terms`), a few names, and operators. Parallel (`||`, `//`) becomes
 * `.*`, which binds like multiplication and has no other use here.
 *
 * @param text tidied
 */
export function terms(text: string, unit: Unit, across?: number): Terms | Refusal {
  const clean = text.replace(/V (pp|pk|rms|p-p)\b/g, 'V$1').replace(/Vp-p/g, 'Vpp');
  const list: Term[] = [];
  let source = '';
  let at = 0;
  const take = (token: RegExp): string | null => {
    token.lastIndex = at;
    const found = token.exec(clean)?.[0] ?? null;
    if (found !== null) at += found.length;
    return found;
  };
  const add = (term: Term | Refusal): Refusal | null => {
    if ('kind' in term) return term;
    source += ` ${list.length} `;
    list.push(term);
    return null;
  };
  while (at < clean.length) {
    let refusal: Refusal | null = null;
    const operator = take(operatorToken);
    if (operator !== null) {
      source += { '||': '.*', '//': '.*', '**': '^' }[operator] ?? operator;
      continue;
    }
    const number = take(numberToken);
    if (number !== null) {
      refusal = add(quantity(number, unit, across));
    } else {
      const name = take(nameToken);
      if (name === null) return wrong(`“${clean[at]}” has no place in a sum.`);
      const call = /^ ?\(/.test(clean.slice(at));
      if (name === 'pi' || name === 'π') source += ' pi ';
      else if (Object.hasOwn(functions, name)) source += ` ${name}`;
      else if (name === 'log' && call) return wrong('Write ln or log10.');
      else refusal = add(loneName(name, unit, across));
    }
    if (refusal) return refusal;
  }
  return { kind: 'terms', source, terms: list };
}

/** A number with its letters. Bare prefixes keep their case here, before hertz too. */
function quantity(token: string, unit: Unit, across?: number): Term | Refusal {
  const parts = pieces(token);
  if (!parts) return wrong(`“${token}” can't be read.`);
  const { number, run, power, letters } = parts;
  if (number.kind === 'none') return wrong(`“${run}” can't be read as one number.`);
  if (number.kind === 'question') {
    const { first, second } = number;
    return wrong(`${run}: did you mean ${first} or ${second}? Write ${first} or ${second}.`);
  }
  if (letters === '') {
    return { value: Number(`${number.text}e${power}`), unit: null, written: 'bare' };
  }
  const prefix = prefixOf(letters, '1');
  if (prefix !== null && !Object.hasOwn(unitRow(unit).spellings, letters)) {
    const value = Number(`${number.text}e${power + prefix}`);
    return { value, unit: null, written: 'prefixed' };
  }
  return withUnit(number.text, power, letters, unit, across);
}

/** Letters without a number: one unit (the W of 10 K/W), or a part written p47. */
function loneName(name: string, unit: Unit, across?: number): Term | Refusal {
  return /\d/.test(name) && !unitSpelled(name)
    ? quantity(name, unit, across)
    : withUnit('1', 0, name, unit, across);
}

function withUnit(
  number: string,
  power: number,
  letters: string,
  unit: Unit,
  across?: number,
): Term | Refusal {
  const own = prefixOf(letters, unit) === null ? suffix(letters, unit) : spelled(letters, unit);
  if (own) {
    return { value: scaled(number, power, own) + unitRow(unit).zero, unit, written: 'unit' };
  }
  // Ways of stating the field's own kind (peak for rms, dBm for W) are converted here.
  for (const alternative of alternatives(unit, across)) {
    const worth = spelled(letters, alternative.unit);
    if (!worth || !alternative.convert) continue;
    const { dimension } = unitRow(alternative.unit);
    if (dimension !== '' && dimension !== unitRow(unit).dimension) continue;
    return { value: alternative.convert(scaled(number, power, worth)), unit, written: 'unit' };
  }
  const kind = unitSpelled(letters);
  const worth = kind && spelled(letters, kind);
  if (!worth) return wrong(`“${letters}” is not known here; ${fieldIn(unit)}.`);
  const { figures, shown, zero } = unitRow(kind);
  if (figures === 'decimals' && shown.startsWith('dB') && !unitRow(unit).shown.startsWith('dB')) {
    return wrong(`${shown} can't be reckoned with here; ${fieldIn(unit)}.`);
  }
  return { value: scaled(number, power, worth) + zero, unit: kind, written: 'unit' };
}
