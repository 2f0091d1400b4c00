/** One step from a version to the next. */
type Migration = (old: Record<string, unknown>) => Record<string, unknown>;

/** Steps by the version they start from. */
export const migrations: Readonly<Record<number, Migration>> = {
  // Version 2 only has more fields: batch, sweeps, ends, yield. An older bench could not keep them.
  1: (old) => ({ ...old, version: 2 }),
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
