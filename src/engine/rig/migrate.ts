/** One step from a version to the next. */
type Migration = (old: Record<string, unknown>) => Record<string, unknown>;

/** Steps by the version they start from. Version 1 is the first, so there are none yet. */
export const migrations: Readonly<Record<number, Migration>> = {};

/** Brings a document of an older version up to the present one, step by step. */
export function migrate(document: Record<string, unknown>): Record<string, unknown> {
  let current = document;
  for (;;) {
    const step = migrations[Number(current.version)];
    if (!step) return current;
    current = step(current);
  }
}
