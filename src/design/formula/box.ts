/** The parts that a formula is set from, before it becomes MathML or plain text. */
export type Box =
  | { readonly is: 'row'; readonly of: readonly Box[] }
  /** Digits, or digits with a unit behind them. */
  | { readonly is: 'number'; readonly digits: string; readonly unit?: string }
  /** A quantity's letter; constants such as π stand upright. */
  | { readonly is: 'letter'; readonly text: string; readonly upright?: boolean }
  /** Functions, and words within a formula: log, cos, if. */
  | { readonly is: 'function'; readonly text: string }
  | { readonly is: 'words'; readonly text: string }
  | { readonly is: 'sign'; readonly text: string; readonly form: 'infix' | 'prefix' | 'postfix' }
  /** Multiplication: a raised dot where it must be seen, else a thin space. */
  | { readonly is: 'times'; readonly seen: boolean }
  | { readonly is: 'comma' }
  | { readonly is: 'fraction'; readonly over: Box; readonly under: Box }
  | { readonly is: 'power'; readonly base: Box; readonly exponent: Box }
  | { readonly is: 'index'; readonly base: Box; readonly index: Box }
  | { readonly is: 'root'; readonly of: Box; readonly degree: Box | null }
  | { readonly is: 'fence'; readonly open: string; readonly close: string; readonly of: Box }
  /** Rows and columns in square brackets. */
  | { readonly is: 'matrix'; readonly rows: readonly (readonly Box[])[] }
  | { readonly is: 'cases'; readonly rows: readonly { value: Box; when: Box | null }[] };

/** Boxes side by side; a single one stays itself. */
export const row = (...of: readonly Box[]): Box => {
  const [only] = of;
  return of.length === 1 && only ? only : { is: 'row', of };
};

export const sign = (text: string, form: 'infix' | 'prefix' | 'postfix' = 'infix'): Box => ({
  is: 'sign',
  text,
  form,
});

export const number = (digits: string): Box => ({ is: 'number', digits });

export const bracketed = (of: Box, open = '(', close = ')'): Box => ({
  is: 'fence',
  open,
  close,
  of,
});

/** Boxes with commas between, as the arguments of a function. */
export const listed = (of: readonly Box[]): Box =>
  row(...of.flatMap((box, index) => (index === 0 ? [box] : [{ is: 'comma' } as const, box])));
