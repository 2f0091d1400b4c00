import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, test } from 'vitest';

/** Which folder may import which: the table of the house. A folder may always import itself. */
const may: readonly (readonly [folder: string, others: readonly string[]])[] = [
  ['src/engine/quantity', []],
  ['src/engine/circuit', ['src/engine/quantity']],
  ['src/engine/waves', ['src/engine/quantity']],
  ['src/engine/data', ['src/engine/quantity']],
  ['src/engine/fields', ['src/engine/quantity']],
  [
    'src/engine/stages',
    [
      'src/engine/quantity',
      'src/engine/circuit',
      'src/engine/waves',
      'src/engine/data',
      'src/engine/fields',
    ],
  ],
  ['src/engine/rig', ['src/engine/quantity', 'src/engine/fields', 'src/engine/stages']],
  [
    'src/engine/errands',
    [
      'src/engine/quantity',
      'src/engine/circuit',
      'src/engine/waves',
      'src/engine/data',
      'src/engine/fields',
      'src/engine/stages',
      'src/engine/rig',
    ],
  ],
  ['src/store', ['src/engine']],
  ['src/workers', ['src/engine']],
  ['src/design', ['src/engine/quantity']],
  ['src/worksheets', ['src/store', 'src/design', 'src/engine', 'src/paper']],
  ['src/paper', ['src/engine']],
];

const files = walk('src').filter((f) => /\.tsx?$/.test(f));
const imports = new Map(files.map((file) => [file, importsOf(file)]));

describe('the house', () => {
  test('each folder imports only what it may', () => {
    const strangers: string[] = [];
    for (const [file, targets] of imports) {
      const rule = may.find(([folder]) => file.startsWith(`${folder}/`));
      if (!rule) continue;
      for (const target of targets) {
        if (!target.startsWith('src/')) continue;
        const allowed = [rule[0], ...rule[1]].some((folder) => target.startsWith(`${folder}/`));
        if (!allowed) strangers.push(`${file} imports ${target}`);
      }
    }
    expect(strangers).toEqual([]);
  });

  test('the engine knows nothing of the page', () => {
    const strangers = [...imports].flatMap(([file, targets]) =>
      file.startsWith('src/engine/') || file.startsWith('src/paper/')
        ? targets
            .filter((t) => /^(react|zustand|recharts|react-dom)/.test(t))
            .map((t) => `${file}: ${t}`)
        : [],
    );
    expect(strangers).toEqual([]);
  });

  test('mathjs is reached only through the files that are fetched when needed', () => {
    const users = [...imports]
      .filter(([, targets]) => targets.some((t) => t.startsWith('mathjs')))
      .map(([file]) => file);
    for (const user of users) {
      expect(user).toMatch(/quantity\/expression\w*\.ts|rig\/reckon\.ts|design\/formula\//);
    }
  });

  test('a stage imports only the declarations of other stages', () => {
    const strangers = [...imports].flatMap(([file, targets]) => {
      const own = /^src\/engine\/stages\/(\w+)\//.exec(file)?.[1];
      if (!own) return [];
      return targets
        .filter(
          (t) => t.startsWith('src/engine/stages/') && !t.startsWith(`src/engine/stages/${own}/`),
        )
        .filter((t) => !t.endsWith('/fields.ts'))
        .map((t) => `${file}: ${t}`);
    });
    expect(strangers).toEqual([]);
  });

  test('a sheet imports no other sheet', () => {
    const strangers = [...imports].flatMap(([file, targets]) => {
      const own = /^src\/worksheets\/(\w+)\//.exec(file)?.[1];
      if (!own || own === 'bound') return [];
      return targets
        .filter((t) => t.startsWith('src/worksheets/'))
        .filter(
          (t) => !t.startsWith(`src/worksheets/${own}/`) && !t.startsWith('src/worksheets/bound/'),
        )
        .map((t) => `${file}: ${t}`);
    });
    expect(strangers).toEqual([]);
  });

  test('no two files need each other', () => {
    const state = new Map<string, 'open' | 'done'>();
    const cycles: string[] = [];
    const visit = (file: string, trail: readonly string[]): void => {
      if (state.get(file) === 'done') return;
      if (state.get(file) === 'open') {
        cycles.push([...trail.slice(trail.indexOf(file)), file].join(' → '));
        return;
      }
      state.set(file, 'open');
      for (const target of imports.get(file) ?? []) visit(target, [...trail, file]);
      state.set(file, 'done');
    };
    for (const file of files) visit(file, []);
    expect(cycles).toEqual([]);
  });

  test('no folder or file is a drawer for odds and ends', () => {
    expect(files.filter((f) => /\/(utils?|helpers?|common|misc|index)(\/|\.)/.test(f))).toEqual([]);
  });

  test('the top level holds what the README says', () => {
    const expected = new Set(
      'README.md DEVELOPERS.md package.json package-lock.json tsconfig.json vite.config.ts index.html src tests public node_modules dist'.split(
        ' ',
      ),
    );
    const others = readdirSync('.').filter((name) => !name.startsWith('.') && !expected.has(name));
    expect(others).toEqual([]);
  });
});

function walk(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    return entry.isDirectory() ? walk(path) : [path];
  });
}

/** What a file imports for running, types apart: project paths, or package names. */
function importsOf(file: string): string[] {
  const text = readFileSync(file, 'utf8');
  const found = [...text.matchAll(/^(?:import|export)\s(?!type\b)[^;]*?from\s+'([^']+)'/gms)]
    .concat([...text.matchAll(/^import\s+'([^']+)'/gm)])
    .concat([...text.matchAll(/\bimport\(\s*'([^']+)'\s*\)/g)]);
  return found.map((m) => {
    const target = (m[1] ?? '').replace(/\?.*$/, '');
    return target.startsWith('.') ? normalize(join(dirname(file), target)) : target;
  });
}
