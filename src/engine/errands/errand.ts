import type { StageFields } from '../fields/declare.ts';
import type { ReadPath, Seen } from '../fields/stage.ts';

/** Which part of the work this is, where it is split over several workers. */
export interface Share {
  readonly index: number;
  readonly of: number;
}

/** What comes to an errand besides the rig and is kept nowhere: sound from a file, another's answer. */
export interface Beside {
  readonly beside: unknown;
}

/**
 * Work too slow for the graph: sent away to a worker, and its answer shown when it comes back.
 * It yields how far it has come, 0 to 1, every few milliseconds, so that it can be called back.
 */
export interface Errand<A = unknown> {
  readonly key: string;
  /** Name to path, with `?` where the value may be missing. */
  readonly reads: Readonly<Record<string, string>>;
  // biome-ignore lint/suspicious/noExplicitAny: a list cannot know each errand's own type
  readonly work: (seen: any, share: Share) => Generator<number, unknown, void>;
  /** Into how many parts the work may be split. */
  readonly shares: number;
  /** Makes the answer of what the shares found, in order; called with a single part as well. */
  // biome-ignore lint/suspicious/noExplicitAny: a list cannot know each errand's own type
  readonly merge: (parts: readonly any[]) => A;
}

/**
 * Ties the parts of an errand together and checks their types. `of` names the fields it may read.
 * What a share finds may be of another type than the answer, if `split` says how to put it together.
 */
export function errand<
  const S extends readonly StageFields[],
  const R extends Readonly<Record<string, ReadPath<S[number]>>>,
  P,
  A = P,
>(parts: {
  key: string;
  of: S;
  reads: R;
  work: (seen: Seen<S[number], R> & Beside, share: Share) => Generator<number, P, void>;
  split?: { shares: number; merge: (parts: readonly P[]) => A };
}): Errand<A> {
  const { key, reads, work, split } = parts;
  return {
    key,
    reads,
    work,
    shares: split?.shares ?? 1,
    merge: split?.merge ?? (([only]) => only as unknown as A),
  };
}
