import fc from 'fast-check';
import type { InputField } from '../../src/engine/fields/kinds.ts';

/** Any value that a field accepts, ends of its range included; blank where it may be blank. */
export function anyValue(field: InputField): fc.Arbitrary<number | string | null> {
  if (field.kind === 'choice') return fc.constantFrom(...Object.keys(field.options));
  if (field.kind === 'pasted') return fc.constant(null);
  const [low, high] = field.range ?? [0, 1];
  const inside = fc
    .double({ min: 0, max: 1, noNaN: true })
    .map((t) => (low > 0 ? low * (high / low) ** t : low + (high - low) * t));
  const value =
    field.kind === 'count'
      ? fc.integer({ min: low, max: high })
      : fc.oneof(inside, fc.constantFrom(low, high));
  return field.default === null ? fc.option(value, { nil: null }) : value;
}

/** Values of all inputs of a stage, by key. */
export const anyInputs = (
  inputs: Readonly<Record<string, InputField>>,
): fc.Arbitrary<Record<string, number | string | null>> =>
  fc.record(Object.fromEntries(Object.entries(inputs).map(([k, f]) => [k, anyValue(f)])));

/** Path of the first number in results that is not finite; null where all are. */
export function notFinite(value: unknown, path = ''): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : `${path} = ${value}`;
  if (typeof value === 'object' && value !== null) {
    for (const [key, inner] of Object.entries(value)) {
      const found = notFinite(inner, `${path}.${key}`);
      if (found) return found;
    }
  }
  return null;
}
