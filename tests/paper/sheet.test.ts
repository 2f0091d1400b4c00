import { spawnSync } from 'node:child_process';
import { mkdtempSync, renameSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { beforeAll, describe, expect, test } from 'vitest';

const folder = mkdtempSync(join(tmpdir(), 'bench-'));

/** The sheet in one file: to read its hundreds of files anew takes seconds each time. */
let bundle: string;

beforeAll(async () => {
  await build({
    configFile: false,
    logLevel: 'error',
    ssr: { noExternal: true },
    build: { ssr: 'src/paper/sheet.ts', outDir: folder },
  });
  bundle = join(folder, 'sheet.mjs');
  renameSync(join(folder, 'sheet.js'), bundle);
}, 60_000);

const sheet = (...words: string[]) => run([bundle, ...words]);

/** As `npm run sheet` starts it. */
const sheetFromSource = (...words: string[]) =>
  run(['--import', 'tsx', 'src/paper/sheet.ts', ...words]);

function run(words: string[]) {
  const { status, stdout, stderr } = spawnSync('node', words, {
    encoding: 'utf8',
  });
  return { status, out: stdout, err: stderr };
}

function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

describe('the headless sheet', () => {
  test('prints the worked design of an example as Markdown', () => {
    const { status, out, err } = sheetFromSource('tests/fixtures/rigs/version-1-example-a.json');
    expect(err).toBe('');
    expect(status).toBe(0);
    expect(out).toMatch(/^# Forty-metre evening rig/);
    expect(out).toContain('## Filter');
    expect(out).toMatch(/\| Series resonance \| 7\.200\d* MHz \| typed \|/);
    expect(out).not.toMatch(/NaN|undefined|\[object/);
  });

  test('prints every input and result as data, in SI units', () => {
    const { status, out } = sheet('tests/fixtures/rigs/version-1-example-a.json', '--json');
    expect(status).toBe(0);
    const data = JSON.parse(out);
    const all = data.stages.flatMap((s: { inputs: unknown[]; results: unknown[] }) => [
      ...s.inputs,
      ...s.results,
    ]);
    const at = (key: string) => all.find((f: { key: string }) => f.key === key);
    expect(at('quartz.lm')).toMatchObject({ value: 0.03, unit: 'H', origin: 'typed' });
    expect(at('plan.supply')).toMatchObject({ value: 12, unit: 'V' });
    expect(at('filter.crystals')).toMatchObject({ value: 6 });
  });

  test.each([
    ['no file', []],
    ['two files', ['a', 'b']],
    ['an unknown flag', ['a.json', '--xml']],
    ['a file that is not there', [join(folder, 'none.json')]],
    ['a broken file', [file('broken.json', '{')]],
    ['a future file', [file('future.json', '{"format":"monoband-bench.rig","version":7}')]],
  ])('%s: exit status 1 and a clear message', (_, words) => {
    const { status, out, err } = sheet(...words);
    expect(status).toBe(1);
    expect(out).toBe('');
    expect(err.trim().length).toBeGreaterThan(10);
    expect(err).not.toMatch(/at .*\.m?[jt]s:\d+/);
  });

  test('a rig with a wrong entry is printed, the problem with it', () => {
    const text =
      '{"format":"monoband-bench.rig","version":1,"title":"t","entries":{"plan.pep":{"text":"lots"}}}';
    const { status, out } = sheet(file('wrong.json', text));
    expect(status).toBe(0);
    expect(out).toContain('plan.pep');
    expect(out).toContain('lots');
  });
});
