/** What was understood, in the unit of storage and always finite. */
export interface Value {
  readonly kind: 'value';
  readonly value: number;
  /** In words, what was taken for granted: "in 50 Ω", "capacitors in parallel add". */
  readonly note?: string;
}

/** Something the reader must tell the person: never a failure of the program. */
export interface Refusal {
  readonly kind: 'wrong';
  readonly says: string;
}

/** What came of a text. An expression has a shape that `readExpression` may understand. */
export type Reading =
  | { readonly kind: 'blank' }
  | Value
  | { readonly kind: 'expression' }
  | Refusal;

/** A refusal with its words. */
export const wrong = (says: string): Refusal => ({ kind: 'wrong', says });

/** A value, or a refusal where it overflowed or came to nothing definite. */
export function valueOr(value: number, text: string, note?: string): Value | Refusal {
  if (!Number.isFinite(value)) return wrong(`“${text}” is no finite number.`);
  const clean = value === 0 ? 0 : value;
  return note === undefined
    ? { kind: 'value', value: clean }
    : { kind: 'value', value: clean, note };
}
