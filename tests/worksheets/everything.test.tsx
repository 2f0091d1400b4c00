import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { allLeaves, leafOf } from '../../src/engine/rig/leaves.ts';
import { stages } from '../../src/engine/rig/stages.ts';

/** A path is on a sheet if it stands there, or its key does where the sheet puts paths together. */
function isOnSheet(stage: string, key: string): boolean {
  const quoted = (what: string) => new RegExp(`['"\`]${what}['"\`]`);
  // The Bench lists its test points from the stage, each with its table and its reading.
  const own = [`src/worksheets/${stage}`, ...(stage === 'bench' ? ['src/engine/stages/bench'] : [])]
    .map(textOf)
    .join('\n');
  if (quoted(`${stage}\\.${key}`).test(textOf('src/worksheets'))) return true;
  const joined = new RegExp(`\`${stage}\\.\\$\\{`).test(own);
  return joined && [key, key.replace(/Given$/, '')].some((name) => quoted(name).test(own));
}

const textOf = (folder: string) =>
  walk(folder)
    .map((file) => readFileSync(file, 'utf8'))
    .join('\n');

test.each(stages.map((s) => [s.fields.title, s.fields] as const))(
  '%s: every input and every result is on a sheet',
  (_, { key, inputs, results }) => {
    const keys = Object.entries({ ...inputs, ...results })
      .filter(([, field]) => field.kind !== 'model')
      .map(([name]) => name);
    const missing = keys.filter((name) => !isOnSheet(key, name));
    expect(missing).toEqual([]);
  },
);

/** A field of another leaf may be quoted too, but an address must lead to where it can be seen. */
test.each(['transmit', 'windings', 'receive'])(
  '%s: every field stands on the leaf that its address opens',
  (of) => {
    const fields = stages.find((s) => s.fields.key === of)?.fields;
    const missing = Object.entries({ ...fields?.inputs, ...fields?.results })
      .filter(([, field]) => field.kind !== 'model')
      .map(([name]) => `${of}.${name}`)
      .filter((path) => allLeaves.includes(leafOf(path)))
      .filter((path) => !textOf(`src/worksheets/${leafOf(path)}`).includes(path))
      .map((path) => `${path} on ${leafOf(path)}`);
    expect(missing).toEqual([]);
  },
);

function walk(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? walk(path) : /\.tsx?$/.test(path) ? [path] : [];
  });
}
