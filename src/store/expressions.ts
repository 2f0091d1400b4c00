import { parse } from '../engine/quantity/parse.ts';
import { readWith } from './bench.ts';
import { useBench } from './store.ts';

/** Fetches the part of the program that reads whole expressions such as `2*47p` or `12 V/2`. */
export async function loadExpressions(): Promise<void> {
  if (useBench.getState().reader === 'full') return;
  const { readExpression } = await import('../engine/quantity/expression.ts');
  readWith((text, unit, options) => {
    const reading = parse(text, unit, options);
    return reading.kind === 'expression' ? readExpression(text, unit, options) : reading;
  });
  useBench.getState().setReader('full');
}
