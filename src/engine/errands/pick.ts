import { valueAt, type Worked } from '../rig/worked.ts';
import type { Errand } from './errand.ts';

/** The values an errand reads, in order: null where there is none, undefined where one is wrong. */
export const pick = (worked: Worked, { reads }: Pick<Errand, 'reads'>): readonly unknown[] =>
  Object.values(reads).map((path) =>
    worked.inputs[bare(path)]?.wrong ? undefined : valueAt(worked, bare(path)),
  );

/**
 * The values under the errand's own names, or null while one that it needs is missing or wrong.
 *
 * @param picked as from `pick`; one more at the end is what comes besides the rig
 */
export function seenBy(
  { reads }: Pick<Errand, 'reads'>,
  picked: readonly unknown[],
): Readonly<Record<string, unknown>> | null {
  const names = Object.entries(reads);
  const lacks = names.some(
    ([, path], i) => picked[i] === undefined || (picked[i] === null && path === bare(path)),
  );
  if (lacks) return null;
  const seen = names.map(([name], i) => [name, picked[i]]);
  return { ...Object.fromEntries(seen), beside: picked[names.length] ?? null };
}

const bare = (path: string) => (path.endsWith('?') ? path.slice(0, -1) : path);
