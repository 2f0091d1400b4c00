import type { MathNode, Unit as MathUnit } from 'mathjs';
import { math } from './expressionMath.ts';
import { functions } from './terms.ts';

/** A number, or a quantity with its dimension. */
export type Worked = number | MathUnit;

/** An expression that isn't worked out, with the reason in words. */
export class Refused extends Error {}

/**
 * Works out the syntax tree of an entered expression. Only numbers, brackets, + − * / ^, parallel
 * and the listed functions are known: nothing in it can assign, call, loop or run long.
 *
 * @param term gives the quantity that stands at a place
 * @param parallel puts two quantities in parallel (`.*` in the tree)
 * @throws Refused with words for the person
 */
export function walk(
  node: MathNode,
  term: (place: number) => Worked,
  parallel: (left: Worked, right: Worked) => Worked,
): Worked {
  const go = (child: MathNode): Worked => walk(child, term, parallel);
  if (is.parenthesis(node)) return go(node.content);
  if (is.constant(node)) return term(Number(node.value));
  if (is.symbol(node) && node.name === 'pi') return Math.PI;
  if (is.call(node)) {
    const name = Object.hasOwn(functions, node.fn.name)
      ? functions[node.fn.name as keyof typeof functions]
      : null;
    const [argument] = node.args;
    if (!name || !argument || node.args.length !== 1)
      throw new Refused('That is no function here.');
    return real((math[name] as (x: Worked) => unknown)(go(argument)));
  }
  if (is.operator(node)) {
    const [left, right] = node.args;
    if (left && !right && node.fn === 'unaryPlus') return go(left);
    if (left && !right && node.fn === 'unaryMinus') return real(math.multiply(-1, go(left)));
    if (left && right) {
      // 1/2pi: half of pi to some, a half over pi to others.
      const slash = (one: MathNode): boolean => is.operator(one) && one.fn === 'divide';
      const joined = (one: MathNode): boolean => is.operator(one) && one.implicit;
      if ((joined(node) && slash(left)) || (slash(node) && joined(right))) {
        throw new Refused(
          'Write * or brackets after the stroke, so that it is clear what it divides.',
        );
      }
      if (node.fn === 'dotMultiply') return parallel(go(left), go(right));
      const operation = operations[node.fn];
      if (operation) return real(operation(go(left), go(right)));
    }
  }
  throw new Refused('Only sums, products, powers, roots and parallels are worked out here.');
}

/** A result as a real number or quantity; anything else (complex, text) is refused. */
export function real(value: unknown): Worked {
  if (typeof value === 'number') return value;
  if (value instanceof Object && 'type' in value && value.type === 'Unit')
    return value as unknown as MathUnit;
  throw new Refused('This has no real number for an answer.');
}

const operations: Readonly<Record<string, (left: Worked, right: Worked) => unknown>> = {
  add: math.add,
  subtract: math.subtract,
  multiply: math.multiply,
  divide: math.divide,
  pow: math.pow as (left: Worked, right: Worked) => unknown,
};

interface OperatorShape {
  readonly fn: string;
  readonly implicit: boolean;
  readonly args: readonly MathNode[];
}

const is = {
  parenthesis: (node: MathNode): node is MathNode & { content: MathNode } =>
    node.type === 'ParenthesisNode',
  constant: (node: MathNode): node is MathNode & { value: unknown } => node.type === 'ConstantNode',
  symbol: (node: MathNode): node is MathNode & { name: string } => node.type === 'SymbolNode',
  call: (node: MathNode): node is MathNode & { fn: { name: string }; args: readonly MathNode[] } =>
    node.type === 'FunctionNode',
  operator: (node: MathNode): node is MathNode & OperatorShape => node.type === 'OperatorNode',
};
