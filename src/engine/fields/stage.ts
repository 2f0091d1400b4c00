import type { StageFields } from './declare.ts';
import type { Origin, ValueOf } from './kinds.ts';
import type { StageWorkings } from './workings.ts';

/**
 * Something that is wrong or to be watched, as data.
 * `stops`: a result cannot be given; `warns`: it can, but look here first.
 */
export interface Problem {
  /** Path of the field to look at: `filter.bandwidth`. */
  readonly field: string;
  readonly weight: 'stops' | 'warns';
  /** What is wrong, with the figure. */
  readonly says: string;
  /** What would help. */
  readonly try?: string;
}

/** A value that may be absent: blank input, or a result that could not be given. */
type Blankable<F> = F extends { default: infer D }
  ? null extends D
    ? ValueOf<F> | null
    : ValueOf<F>
  : ValueOf<F> | null;

type FieldsOf<S> = S extends { inputs: infer I; results: infer R } ? I & R : never;

/** `plan.sideband`, `filter.loss` … for every field of the given stages. */
export type Path<S extends StageFields> = S extends StageFields
  ? `${S['key']}.${keyof FieldsOf<S> & string}`
  : never;

/** A path that a stage reads; a question mark at its end means that it also works without. */
export type ReadPath<S extends StageFields> = Path<S> | `${Path<S>}?`;

type At<S extends StageFields, P extends string> = P extends `${infer K}.${infer F}`
  ? Extract<S, { key: K }> extends infer Owner
    ? F extends keyof FieldsOf<Owner>
      ? Blankable<FieldsOf<Owner>[F]>
      : never
    : never
  : never;

/** The values that `work` is given, named as the stage names them. */
export type Seen<S extends StageFields, R extends Readonly<Record<string, string>>> = {
  readonly [N in keyof R]: R[N] extends `${infer P}?` ? At<S, P> | null : NonNullable<At<S, R[N]>>;
};

/** What `work` answers: each result or null, and what there is to say. */
export interface Work<F extends StageFields> {
  readonly results: { readonly [K in keyof F['results']]: ValueOf<F['results'][K]> | null };
  readonly problems: readonly Problem[];
  /** Only where a result is a guess or was typed or measured; others are worked. */
  readonly origins?: { readonly [K in keyof F['results']]?: Origin };
}

/** A stage as the list holds it. */
export interface Stage<F extends StageFields = StageFields> {
  readonly fields: F;
  /** Name to path, with `?` where the value may be missing. */
  readonly reads: Readonly<Record<string, string>>;
  // biome-ignore lint/suspicious/noExplicitAny: the list cannot know each stage's own type
  readonly work: (seen: any) => Work<F>;
  readonly workings: StageWorkings<F>;
}

/**
 * Ties the parts of a stage together and checks their types:
 * `after` names the fields of earlier stages, so reading a later one does not compile.
 */
export function stage<
  F extends StageFields,
  const A extends readonly StageFields[],
  const R extends Readonly<Record<string, ReadPath<F | A[number]>>>,
>(parts: {
  fields: F;
  after: A;
  reads: R;
  work: (seen: Seen<F | A[number], R>) => Work<F>;
  workings: StageWorkings<F>;
}): Stage<F> {
  const { fields, reads, work, workings } = parts;
  return { fields, reads, work, workings };
}

/** Results of a stage that cannot answer: null for each. */
export function noResults<F extends StageFields>(fields: F): Work<F>['results'] {
  const results: Record<string, null> = {};
  for (const key of Object.keys(fields.results)) results[key] = null;
  return results as Work<F>['results'];
}
