import type {
  Choice,
  Count,
  Curve,
  InputField,
  List,
  Model,
  Pasted,
  Quantity,
  ResultField,
  Table,
  Words,
} from './kinds.ts';

/** The fields of one stage: what the user may say, and what the stage answers. One key space. */
export interface StageFields<
  K extends string = string,
  I extends Readonly<Record<string, InputField>> = Readonly<Record<string, InputField>>,
  R extends Readonly<Record<string, ResultField>> = Readonly<Record<string, ResultField>>,
> {
  readonly key: K;
  /** The worksheet's name. */
  readonly title: string;
  /** The question that this sheet answers, in one sentence. */
  readonly asks: string;
  readonly inputs: I;
  readonly results: R;
}

/** Declares a stage's fields, keeping the literal types that everything else derives from. */
export function declare<
  const K extends string,
  const I extends Readonly<Record<string, InputField>>,
  const R extends Readonly<Record<string, ResultField>>,
>(fields: StageFields<K, I, R>): StageFields<K, I, R> {
  for (const key of Object.keys(fields.results)) {
    if (key in fields.inputs) throw new Error(`${fields.key}.${key} is both input and result`);
  }
  return fields;
}

type Bare<T> = Omit<T, 'kind'>;

/** A quantity in SI units. */
export const quantity = <const F extends Bare<Quantity>>(f: F): F & { kind: 'quantity' } => ({
  ...f,
  kind: 'quantity',
});

/** A whole number. */
export const count = <const F extends Bare<Count>>(f: F): F & { kind: 'count' } => ({
  ...f,
  kind: 'count',
});

/** One of several named possibilities. */
export const choice = <const F extends Bare<Choice>>(f: F): F & { kind: 'choice' } => ({
  ...f,
  kind: 'choice',
});

/** Text of several lines; blank until something is pasted. */
export const pasted = <const F extends Omit<Bare<Pasted>, 'default'>>(
  f: F,
): F & { kind: 'pasted'; default: null } => ({ ...f, kind: 'pasted', default: null });

/** A sentence or name. */
export const words = <const F extends Bare<Words>>(f: F): F & { kind: 'words' } => ({
  ...f,
  kind: 'words',
});

/** Several quantities of one kind. */
export const list = <const F extends Bare<List>>(f: F): F & { kind: 'list' } => ({
  ...f,
  kind: 'list',
});

/** Rows of named columns. */
export const table = <const F extends Bare<Table>>(f: F): F & { kind: 'table' } => ({
  ...f,
  kind: 'table',
});

/** Quantities along an axis. */
export const curve = <const F extends Bare<Curve>>(f: F): F & { kind: 'curve' } => ({
  ...f,
  kind: 'curve',
});

/** Plain data for a later stage: `model<Ladder>()({ label, help })`. */
export const model =
  <T>() =>
  (f: Bare<Omit<Model<T>, 'shape'>>): Model<T> => ({ ...f, kind: 'model' });
