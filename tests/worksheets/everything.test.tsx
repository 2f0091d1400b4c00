import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { stages } from '../../src/engine/rig/stages.ts';

/** All text of the worksheets, with the one templated list of paths written out. */
const text = walk('src/worksheets')
  .map((file) => readFileSync(file, 'utf8'))
  .join('\n');
const templated = [...text.matchAll(/const keys = \[([^\]]+)\] as const/g)].flatMap((m) =>
  [...(m[1] ?? '').matchAll(/'(\w+)'/g)].map((k) => `quartz.${k[1]}Given`),
);

test.each(stages.map((s) => [s.fields.title, s.fields] as const))(
  '%s: every input and every result is on a sheet',
  (_, { key, inputs, results }) => {
    const paths = [
      ...Object.keys(inputs),
      ...Object.entries(results)
        .filter(([, field]) => field.kind !== 'model')
        .map(([name]) => name),
    ].map((name) => `${key}.${name}`);
    const missing = paths.filter(
      (path) =>
        !templated.includes(path) &&
        !new RegExp(`['"\`]${path.replace('.', '\\.')}['"\`]`).test(text),
    );
    expect(missing).toEqual([]);
  },
);

function walk(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? walk(path) : /\.tsx?$/.test(path) ? [path] : [];
  });
}
