import { readExpression } from '../engine/quantity/expression.ts';
import { parse } from '../engine/quantity/parse.ts';
import type { Reader } from '../engine/rig/enter.ts';

/** Reads plain entries and whole expressions alike; for use where nothing has to be fetched late. */
export const fullReader: Reader = (text, unit, options) => {
  const reading = parse(text, unit, options);
  return reading.kind === 'expression' ? readExpression(text, unit, options) : reading;
};
