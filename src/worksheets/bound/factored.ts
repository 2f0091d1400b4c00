/** A long formula made readable: the matrices in it named, each to be shown on a line of its own. */
export interface Factored {
  readonly formula: string;
  readonly matrices: readonly { readonly symbol: string; readonly formula: string }[];
}

const innermost = /\[[^[\]]*;[^[\]]*\]/g;
const run = /M_\d+(?: \* M_\d+){2,}/;

/**
 * Takes the matrices out of a formula in mathjs syntax and puts symbols in their place. Equal ones
 * share a symbol; where there are fewer than three, the formula is left as it is.
 */
export function factored(formula: string): Factored {
  const found = formula.match(innermost) ?? [];
  if (found.length < 3) return { formula, matrices: [] };
  const names = new Map<string, string>();
  for (const matrix of found) {
    if (!names.has(matrix)) names.set(matrix, `M_${names.size + 1}`);
  }
  const matrices = [...names].map(([matrix, symbol]) => ({ symbol, formula: matrix }));
  const named = formula.replace(innermost, (matrix) => names.get(matrix) ?? matrix);
  const chain = named.match(run)?.[0];
  if (chain === undefined) return { formula: named, matrices };
  return {
    formula: named.replaceAll(chain, 'M'),
    matrices: [...matrices, { symbol: 'M', formula: chain }],
  };
}
