/**
 * What was understood of a text. A value is in the unit of storage and always finite; a note says
 * in words what was taken for granted. An expression has a shape that `readExpression` may read.
 */
export type Reading =
  | { readonly kind: 'blank' }
  | { readonly kind: 'value'; readonly value: number; readonly note?: string }
  | { readonly kind: 'expression' }
  | { readonly kind: 'wrong'; readonly says: string };

/** Something the reader must tell the person: never a failure of the program. */
export const wrong = (says: string): { readonly kind: 'wrong'; readonly says: string } => ({
  kind: 'wrong',
  says,
});

/** A value, or a refusal where it overflowed or came to nothing definite. */
export function valueOr(value: number, text: string, note?: string): Reading {
  if (!Number.isFinite(value)) return wrong(`“${text}” is no finite number.`);
  const clean = value === 0 ? 0 : value;
  return note === undefined
    ? { kind: 'value', value: clean }
    : { kind: 'value', value: clean, note };
}
