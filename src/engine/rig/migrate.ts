import { type Moves, to3, to4 } from './movedEntries.ts';

/** One step from a version to the next. */
type Migration = (old: Record<string, unknown>) => Record<string, unknown>;

/** Steps by the version they start from. */
export const migrations: Readonly<Record<number, Migration>> = {
  // Version 2 only has more fields: batch, sweeps, ends, yield. An older bench could not keep them.
  1: (old) => ({ ...old, version: 2 }),
  // Version 3: core box and supply are stages of their own, and some entries went there.
  2: (old) => ({ ...old, ...withMoved(old.entries, old.notes, to3), version: 3 }),
  // Version 4: a line's known loss is typed where the line is.
  3: (old) => ({ ...old, ...withMoved(old.entries, old.notes, to4), version: 4 }),
};

/** Brings a document of an older version up to the present one, step by step. */
export function migrate(document: Record<string, unknown>): Record<string, unknown> {
  let current = document;
  for (;;) {
    const step = migrations[Number(current.version)];
    if (!step) return current;
    current = step(current);
  }
}

/** Entries under their new names; what has no place any more is kept in the notes. */
function withMoved(
  entries: unknown,
  notes: unknown,
  { moved, gone }: Moves,
): Record<string, unknown> {
  if (typeof entries !== 'object' || entries === null) return {};
  const all = Object.entries(entries);
  // Made from pairs, and asked for own keys only: a file may name anything, “__proto__” too.
  const kept = Object.fromEntries(
    all
      .filter(([path]) => !Object.hasOwn(gone, path))
      .map(([path, entry]) => [Object.hasOwn(moved, path) ? moved[path] : path, entry]),
  );
  const left = all
    .filter(([path]) => Object.hasOwn(gone, path))
    .map(([path, entry]) => `${gone[path]}: ${textOf(entry)}`);
  if (left.length === 0) return { entries: kept };
  const before = typeof notes === 'string' && notes !== '' ? `${notes}\n` : '';
  return { entries: kept, notes: `${before}No longer asked for. ${left.join('. ')}.` };
}

const textOf = (entry: unknown): string =>
  typeof entry === 'object' && entry !== null && 'text' in entry ? String(entry.text) : '';
