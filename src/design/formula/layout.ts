import type { MathNode } from 'mathjs';
import { math } from '../../engine/quantity/expressionMath.ts';
import { type At, binding, type Laid, type SetSymbol } from './binding.ts';
import { type Box, bracketed, number, row, sign } from './box.ts';
import { call, powerOfCall } from './call.ts';
import { is } from './nodes.ts';
import { solidus } from './solidus.ts';

/** Lays out an expression in mathjs syntax. @throws SyntaxError where it is none */
export function layout(expression: string, symbol: SetSymbol): Box {
  return set(math.parse(expression), symbol).box;
}

/** Lays out one node of the syntax tree. Brackets follow from binding, not from those typed. */
export function set(node: MathNode, symbol: SetSymbol): Laid {
  const at = (child: MathNode, least: number): Box => {
    const { box, binds } = set(child, symbol);
    return binds < least ? bracketed(box) : box;
  };
  const open = (child: MathNode): Box => at(child, binding.choice);

  if (is.parenthesis(node)) return set(node.content, symbol);
  if (is.constant(node)) return constant(node.value);
  if (is.symbol(node)) return symbol(node.name);
  if (is.choice(node)) return { box: cases(node, open), binds: binding.choice };
  if (is.chain(node)) {
    const boxes = node.params.flatMap((param, index) => {
      const sense = node.conditionals[index - 1];
      const shown = at(param, binding.sum);
      return sense === undefined ? [shown] : [sign(comparisons[sense] ?? sense), shown];
    });
    return { box: row(...boxes), binds: binding.comparison };
  }
  if (is.list(node)) {
    const rows = node.items.map((item) => (is.list(item) ? item.items.map(open) : [open(item)]));
    const flat = node.items.every((item) => !is.list(item));
    return {
      box: { is: 'matrix', rows: flat ? [rows.flat()] : rows },
      binds: binding.atom,
    };
  }
  if (is.call(node)) return call(node.fn.name, node.args, at);
  if (is.operator(node)) return operator(node, at);
  return { box: { is: 'words', text: node.toString() }, binds: binding.choice };
}

type Operator = Extract<Parameters<typeof is.operator>[0], MathNode> & {
  readonly fn: string;
  readonly op: string;
  readonly args: readonly MathNode[];
};

function operator(node: Operator, at: At): Laid {
  const [left, right] = node.args;
  if (!left) return { box: { is: 'words', text: node.toString() }, binds: binding.choice };
  if (!right) {
    if (node.fn === 'factorial') {
      return { box: row(at(left, binding.atom), sign('!', 'postfix')), binds: binding.closed };
    }
    if (node.fn === 'not') {
      return {
        box: row({ is: 'words', text: 'not ' }, at(left, binding.comparison)),
        binds: binding.logic,
      };
    }
    const mark = node.fn === 'unaryMinus' ? '−' : '+';
    return { box: row(sign(mark, 'prefix'), at(left, binding.product)), binds: binding.sum };
  }
  const compared = comparisons[node.fn];
  if (compared !== undefined) {
    const box = row(at(left, binding.sum), sign(compared), at(right, binding.sum));
    return { box, binds: binding.comparison };
  }
  switch (node.fn) {
    case 'add': {
      // A sum needs no brackets behind a plus, but a leading minus does.
      const after = startsWithMinus(right) ? binding.product : binding.sum;
      return {
        box: row(at(left, binding.sum), sign('+'), at(right, after)),
        binds: binding.sum,
      };
    }
    case 'subtract':
      return {
        box: row(at(left, binding.sum), sign('−'), at(right, binding.product)),
        binds: binding.sum,
      };
    case 'and':
    case 'or': {
      const word: Box = { is: 'words', text: ` ${node.fn} ` };
      // Of the two, "and" binds closer; brackets say so to those who forget.
      const least = node.fn === 'or' ? binding.logic : binding.comparison;
      return { box: row(at(left, least), word, at(right, least)), binds: binding.logic };
    }
    case 'mod':
      return {
        box: row(
          at(left, binding.closed),
          { is: 'words', text: ' mod ' },
          at(right, binding.closed),
        ),
        binds: binding.product,
      };
    case 'pow':
    case 'dotPow':
      return power(left, right, at);
    case 'multiply':
    case 'dotMultiply':
    case 'divide':
    case 'dotDivide':
      return product(node, at);
    default:
      return { box: { is: 'words', text: node.toString() }, binds: binding.choice };
  }
}

/** Roots where the exponent is one, cos²(x) for powers of functions, else a raised exponent. */
function power(base: MathNode, exponent: MathNode, at: At): Laid {
  const degree = rootDegree(exponent);
  if (degree !== null) {
    const box: Box = {
      is: 'root',
      of: at(base, binding.choice),
      degree: degree === 2 ? null : number(String(degree)),
    };
    return { box, binds: binding.atom };
  }
  const raised = solidus(at(exponent, binding.choice));
  const inner = bare(base);
  const called = is.call(inner) ? powerOfCall(inner.fn.name, inner.args, raised, at) : null;
  if (called) return called;
  const box: Box = { is: 'power', base: at(base, binding.atom), exponent: raised };
  return { box, binds: binding.closed };
}

function rootDegree(exponent: MathNode): number | null {
  const node = bare(exponent);
  if (is.constant(node)) return node.value === 0.5 ? 2 : null;
  if (!is.operator(node) || node.fn !== 'divide') return null;
  const [one, degree] = node.args;
  if (!one || !degree || !is.constant(one) || !is.constant(degree) || one.value !== 1) return null;
  return typeof degree.value === 'number' && Number.isInteger(degree.value) ? degree.value : null;
}

/** A run of factors and divisors as typed, without brackets, becomes one fraction. */
function product(node: Operator, at: At): Laid {
  const over: MathNode[] = [];
  const under: MathNode[] = [];
  const gather = (one: MathNode): void => {
    const [left, right] = is.operator(one) ? one.args : [];
    const fn = is.operator(one) ? one.fn.replace('dot', '').toLowerCase() : '';
    if (left && right && (fn === 'multiply' || fn === 'divide')) {
      gather(left);
      (fn === 'multiply' ? over : under).push(right);
    } else {
      over.push(one);
    }
  };
  gather(node);
  // A leading minus stands before the whole: −2πI, not (−2)πI.
  const [lead, ...others] = over;
  const [inner] = lead && is.operator(lead) && lead.fn === 'unaryMinus' ? lead.args : [];
  if (inner) {
    const rest = quotient([inner, ...others], under, at);
    return { box: row(sign('−', 'prefix'), rest.box), binds: binding.sum };
  }
  return quotient(over, under, at);
}

function quotient(over: readonly MathNode[], under: readonly MathNode[], at: At): Laid {
  if (under.length === 0) return { box: factors(over, at), binds: binding.product };
  const upper = over.length > 1 && isOne(over[0]) ? over.slice(1) : over;
  const box: Box = { is: 'fraction', over: factors(upper, at), under: factors(under, at) };
  return { box, binds: binding.closed };
}

function factors(list: readonly MathNode[], at: At): Box {
  const [only] = list;
  if (list.length === 1 && only) return at(only, binding.choice);
  const boxes = list.map((one) => at(one, binding.product));
  return row(
    ...boxes.flatMap((box, index): Box[] => {
      const before = boxes[index - 1];
      return before ? [{ is: 'times', seen: dotNeeded(before, box) }, box] : [box];
    }),
  );
}

/** Digits side by side would run together; a number with unit wants its end marked too. */
function dotNeeded(before: Box, after: Box): boolean {
  if (endsInUnit(before) || startsWithDigit(after)) return true;
  return before.is === 'fraction' && after.is === 'fraction';
}

function endsInUnit(box: Box): boolean {
  if (box.is === 'row') {
    const last = box.of.at(-1);
    return last ? endsInUnit(last) : false;
  }
  return box.is === 'number' && box.unit !== undefined;
}

function startsWithDigit(box: Box): boolean {
  if (box.is === 'row') return box.of[0] ? startsWithDigit(box.of[0]) : false;
  if (box.is === 'power' || box.is === 'index') return startsWithDigit(box.base);
  return box.is === 'number';
}

function cases(node: MathNode, open: (child: MathNode) => Box): Box {
  const rows: { value: Box; when: Box | null }[] = [];
  let rest = bare(node);
  while (is.choice(rest)) {
    rows.push({ value: open(rest.trueExpr), when: open(rest.condition) });
    rest = bare(rest.falseExpr);
  }
  rows.push({ value: open(rest), when: null });
  return { is: 'cases', rows };
}

function constant(value: unknown): Laid {
  if (typeof value !== 'number') {
    return { box: { is: 'words', text: String(value) }, binds: binding.atom };
  }
  const [mantissa = '', exponent] = String(value).split('e');
  if (exponent === undefined) return { box: number(mantissa), binds: binding.atom };
  const shift = exponent.replace('+', '').replace('-', '−');
  const ten: Box = { is: 'power', base: number('10'), exponent: number(shift) };
  const box = mantissa === '1' ? ten : row(number(mantissa), { is: 'times', seen: true }, ten);
  return { box, binds: mantissa === '1' ? binding.closed : binding.product };
}

function startsWithMinus(node: MathNode): boolean {
  const inner = bare(node);
  if (!is.operator(inner)) return false;
  const [left, right] = inner.args;
  return inner.fn === 'unaryMinus' || (right && left ? startsWithMinus(left) : false);
}

const isOne = (node: MathNode | undefined): boolean =>
  node !== undefined && is.constant(node) && node.value === 1;

function bare(node: MathNode): MathNode {
  return is.parenthesis(node) ? bare(node.content) : node;
}

const comparisons: Readonly<Record<string, string>> = {
  smaller: '<',
  smallerEq: '≤',
  larger: '>',
  largerEq: '≥',
  equal: '=',
  unequal: '≠',
};
