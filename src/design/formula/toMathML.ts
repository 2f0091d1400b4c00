import { binding, type Laid, type SetSymbol } from './binding.ts';
import { type Box, row, sign } from './box.ts';
import { layout } from './layout.ts';
import { mathml } from './mathml.ts';
import { plainText } from './plainText.ts';
import { symbol } from './symbol.ts';

/** A formula ready to show. */
export interface Formula {
  /** A whole `<math>` element, escaped. */
  readonly mathml: string;
  /** The same on one line. */
  readonly text: string;
}

/**
 * Typesets an expression in mathjs syntax with its symbols. Brings in mathjs: reach it by a lazy
 * import, or at build time.
 *
 * @param sides one expression, or several with an equals sign between: `['f_s', '1/(2*pi*…)']`.
 *   What can't be parsed is set as words, so a symbol in any notation may stand there.
 * @param names how a symbol is printed, where not as it is spelt in the expression: `L_m` has its
 *   index low, `omega_0` its Greek letter
 */
export function toMathML(
  sides: string | readonly string[],
  names: Readonly<Record<string, string>> = {},
): Formula {
  return typeset(sides, (name) => letters(own(names, name) ?? name));
}

/**
 * Typesets the same with numbers put in.
 *
 * @param values a symbol's figure and unit as `format` gives them: `{ L_m: '30.0 mH' }`; symbols
 *   without one stay letters
 */
export function toMathMLWithNumbers(
  sides: string | readonly string[],
  values: Readonly<Record<string, string>>,
  names: Readonly<Record<string, string>> = {},
): Formula {
  return typeset(sides, (name) => {
    const value = own(values, name);
    return value === undefined ? letters(own(names, name) ?? name) : figure(value);
  });
}

function typeset(sides: string | readonly string[], set: SetSymbol): Formula {
  const boxes = (typeof sides === 'string' ? [sides] : sides).map((side) => laidOut(side, set));
  const box = row(...boxes.flatMap((one, index) => (index === 0 ? [one] : [sign('='), one])));
  return {
    mathml: `<math displaystyle="true">${mathml(box)}</math>`,
    text: plainText(box).replace(/ {2,}/g, ' ').trim(),
  };
}

function laidOut(side: string, set: SetSymbol): Box {
  try {
    return layout(side, set);
  } catch {
    return { is: 'words', text: side };
  }
}

const letters = (name: string): Laid => ({ box: symbol(name), binds: binding.atom });

/** "30.0 mH" → 30.0, mH. A negative number wants brackets in a product, one with unit under a power. */
function figure(value: string): Laid {
  const found = /^([−-]?)([\d.,\u202f×⁻⁰¹²³⁴⁵⁶⁷⁸⁹ ]*[\d⁰¹²³⁴⁵⁶⁷⁸⁹∞])[\s\u00a0]*(.*)$/.exec(value);
  if (!found) return { box: { is: 'words', text: value }, binds: binding.choice };
  const [, minus = '', digits = '', unit = ''] = found;
  const box: Box = { is: 'number', digits, ...(unit === '' ? {} : { unit }) };
  if (minus !== '') return { box: row(sign('−', 'prefix'), box), binds: binding.sum };
  const plain = unit === '' && !digits.includes('×');
  return { box, binds: plain ? binding.atom : binding.closed };
}

const own = (record: Readonly<Record<string, string>>, name: string): string | undefined =>
  Object.hasOwn(record, name) ? record[name] : undefined;
