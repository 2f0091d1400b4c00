import type { Origin } from '../fields/kinds.ts';

/** What the user said about one field: the text as typed, and whether it was read off a meter. */
export interface Entry {
  readonly text: string;
  readonly from?: Extract<Origin, 'typed' | 'measured'>;
}

/** A rig: the plain document that everything else is worked out from. */
export interface Rig {
  readonly format: 'monoband-bench.rig';
  readonly version: 4;
  readonly title: string;
  /** True for the examples that come with the program: nobody built them. */
  readonly invented?: boolean;
  readonly notes?: string;
  /** Path of an input to what was said. A field that is not here has its default. */
  readonly entries: Readonly<Record<string, Entry>>;
}

/** A rig about which nothing has been said yet. */
export function emptyRig(title = 'New rig'): Rig {
  return { format: 'monoband-bench.rig', version: 4, title, entries: {} };
}

/** The same rig with one field said differently; an empty text takes the field back. */
export function withEntry(rig: Rig, path: string, text: string, from?: Entry['from']): Rig {
  const { [path]: before, ...others } = rig.entries;
  const origin = from ?? before?.from;
  if (text.trim() === '') return { ...rig, entries: others };
  return { ...rig, entries: { ...others, [path]: origin ? { text, from: origin } : { text } } };
}
