import type { MathNode } from 'mathjs';

const ofType =
  <Shape>(type: string) =>
  (node: MathNode): node is MathNode & Shape =>
    node.type === type;

/** The kinds of node of a syntax tree that formulas are made of. */
export const is = {
  parenthesis: ofType<{ readonly content: MathNode }>('ParenthesisNode'),
  constant: ofType<{ readonly value: unknown }>('ConstantNode'),
  symbol: ofType<{ readonly name: string }>('SymbolNode'),
  operator: ofType<{ readonly fn: string; readonly op: string; readonly args: MathNode[] }>(
    'OperatorNode',
  ),
  call: ofType<{ readonly fn: { readonly name: string }; readonly args: MathNode[] }>(
    'FunctionNode',
  ),
  choice: ofType<{
    readonly condition: MathNode;
    readonly trueExpr: MathNode;
    readonly falseExpr: MathNode;
  }>('ConditionalNode'),
  chain: ofType<{ readonly params: MathNode[]; readonly conditionals: string[] }>('RelationalNode'),
  list: ofType<{ readonly items: MathNode[] }>('ArrayNode'),
};
