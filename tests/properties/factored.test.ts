import { expect, test } from 'vitest';
import { math } from '../../src/engine/quantity/expressionMath.ts';
import { factored } from '../../src/worksheets/bound/factored.ts';

// Closed form: taking a matrix out and naming it does not change a product.
test('a formula with its matrices named has the value it had', () => {
  const formula =
    'abs(sum([1, a] * [1, a; 0, 1] * [1, 0; b * (1 + a), 1] * [1, a; 0, 1] * [a / b; 1])) + a';
  const { formula: short, matrices } = factored(formula);
  expect(short).toBe('abs(sum([1, a] * M)) + a');
  expect(matrices.map((m) => m.symbol)).toEqual(['M_1', 'M_2', 'M_3', 'M']);
  const scope: Record<string, unknown> = { a: 1.7, b: 0.3 };
  const whole = math
    .parse(formula)
    .compile()
    .evaluate({ ...scope });
  for (const m of matrices) scope[m.symbol] = math.parse(m.formula).compile().evaluate(scope);
  expect(math.parse(short).compile().evaluate(scope)).toBeCloseTo(Number(whole), 12);
});

test('a formula with few matrices stays as it is', () => {
  expect(factored('[1, a; 0, 1] * b')).toEqual({ formula: '[1, a; 0, 1] * b', matrices: [] });
});
