import type { MathNode } from 'mathjs';
import { type At, binding, type Laid } from './binding.ts';
import { type Box, bracketed, listed, number, row, sign } from './box.ts';

import { solidus } from './solidus.ts';
import { symbol } from './symbol.ts';

const fences: Readonly<Record<string, readonly [string, string]>> = {
  abs: ['|', '|'],
  ceil: ['⌈', '⌉'],
  floor: ['⌊', '⌋'],
};

const printed: Readonly<Record<string, string>> = {
  asin: 'arcsin',
  acos: 'arccos',
  atan: 'arctan',
  asinh: 'arsinh',
  acosh: 'arcosh',
  atanh: 'artanh',
  re: 'Re',
  im: 'Im',
};

// Functions whose square is written on the name: cos²(x).
const raisedOnName = ['sin', 'cos', 'tan', 'sinh', 'cosh', 'tanh'];

/** Sets a function: roots, bars, logarithms and sums in their own shapes, others by name. */
export function call(name: string, args: readonly MathNode[], at: At): Laid {
  const open = args.map((argument) => at(argument, binding.choice));
  const [first = number(''), second] = open;
  const atom = (box: Box): Laid => ({ box, binds: binding.atom });
  const fence = Object.hasOwn(fences, name) ? fences[name] : undefined;
  if (fence) return atom(bracketed(first, fence[0], fence[1]));
  switch (name) {
    case 'sqrt':
      return atom({ is: 'root', of: first, degree: null });
    case 'cbrt':
      return atom({ is: 'root', of: first, degree: number('3') });
    case 'nthRoot':
      return atom({ is: 'root', of: first, degree: second ?? null });
    case 'exp': {
      const base: Box = { is: 'letter', text: 'e', upright: true };
      return { box: { is: 'power', base, exponent: solidus(first) }, binds: binding.closed };
    }
    case 'log10':
    case 'log2':
      return named({ is: 'index', base: log, index: number(name.slice(3)) }, first);
    case 'log':
      return second
        ? named({ is: 'index', base: log, index: second }, first)
        : named({ is: 'function', text: 'ln' }, first);
    case 'sum':
      return sum(args, open, at);
    case 'parallel':
      return {
        box: joined(
          args.map((argument) => at(argument, binding.closed)),
          sign('∥'),
        ),
        binds: binding.sum,
      };
    default:
      return named(head(name), listed(open));
  }
}

/** cos²(x) and its like; null where the exponent belongs behind. */
export function powerOfCall(
  name: string,
  args: readonly MathNode[],
  exponent: Box,
  at: At,
): Laid | null {
  if (!raisedOnName.includes(name) || exponent.is !== 'number') return null;
  const open = args.map((argument) => at(argument, binding.choice));
  return named({ is: 'power', base: head(name), exponent }, listed(open));
}

const log: Box = { is: 'function', text: 'log' };

const named = (name: Box, inside: Box): Laid => ({
  box: row(name, bracketed(inside)),
  binds: binding.closed,
});

/** Known functions by their printed names; others, such as T_n(x), as symbols. */
function head(name: string): Box {
  if (Object.hasOwn(printed, name)) return { is: 'function', text: printed[name] ?? name };
  return /^[a-z]{2,}\d?$/.test(name) ? { is: 'function', text: name } : symbol(name);
}

function sum(args: readonly MathNode[], open: readonly Box[], at: At): Laid {
  const [only] = args;
  const items = only && args.length === 1 && 'items' in only ? (only.items as MathNode[]) : args;
  if (items.length > 1) {
    const terms = items.map((item) => at(item, binding.sum));
    return { box: joined(terms, sign('+')), binds: binding.sum };
  }
  return { box: row(sign('∑', 'prefix'), ...open), binds: binding.product };
}

const joined = (boxes: readonly Box[], between: Box): Box =>
  row(...boxes.flatMap((box, index) => (index === 0 ? [box] : [between, box])));
