import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyRig } from '../../src/engine/rig/document.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { readRigFile, rigFileSchema, writeRigFile } from '../../src/engine/rig/file.ts';
import { migrations } from '../../src/engine/rig/migrate.ts';
import { randomRig } from './randomRig.ts';

describe('the rig file', () => {
  test('what is written is read again, the raw text kept', () => {
    fc.assert(
      fc.property(randomRig, (rig) => {
        expect(readRigFile(writeRigFile(rig))).toEqual({ ok: true, rig });
      }),
      { numRuns: 50 },
    );
  });

  test('S1 every version ever released opens', () => {
    const folder = 'tests/fixtures/rigs';
    const files = readdirSync(folder).filter((f) => f.startsWith('version-'));
    expect(files.length).toBeGreaterThan(0);
    for (const file of files) {
      expect(readRigFile(readFileSync(`${folder}/${file}`, 'utf8')), file).toMatchObject({
        ok: true,
      });
    }
  });

  test('S2 every migration is exercised by a fixture of its version', () => {
    const files = readdirSync('tests/fixtures/rigs');
    for (const version of Object.keys(migrations)) {
      expect(files.some((f) => f.startsWith(`version-${version}`))).toBe(true);
    }
  });

  test('what moved is found where it went, as it was typed', () => {
    const old = {
      format: 'monoband-bench.rig',
      version: 2,
      title: 'x',
      entries: {
        'path.ground': { text: 'sea' },
        'windings.wire': { text: 'AWG 26' },
        'path.feedLoss': { text: '1.3 dB' },
        'path.farFeedLoss': { text: 'nonsense' },
      },
    };
    const reading = readRigFile(JSON.stringify(old));
    expect(reading).toMatchObject({
      ok: true,
      rig: {
        version: 4,
        entries: {
          'antenna.ground': { text: 'sea' },
          'cores.wire': { text: 'AWG 26' },
          'feed.knownLoss': { text: '1.3 dB' },
          'feed.farKnownLoss': { text: 'nonsense' },
        },
      },
    });
  });

  test.each([
    ['nothing', '', /not a JSON file/],
    ['half a file', writeRigFile(emptyRig()).slice(0, 40), /not a JSON file/],
    ['a list', '[1,2]', /one JSON object/],
    ['a foreign file', '{"name":"x","version":1}', /another kind/],
    ['a future file', '{"format":"monoband-bench.rig","version":5}', /version 5/],
    [
      'an unknown field',
      '{"format":"monoband-bench.rig","version":1,"title":"x","entries":{"filter.flavour":{"text":"x"}}}',
      /does not know.*filter\.flavour/,
    ],
    [
      'a wrong choice',
      '{"format":"monoband-bench.rig","version":1,"title":"x","entries":{"plan.sideband":{"text":"both"}}}',
      /plan\.sideband/,
    ],
    [
      'a number for a text',
      '{"format":"monoband-bench.rig","version":1,"title":"x","entries":{"plan.pep":{"text":5}}}',
      /plan\.pep/,
    ],
    [
      'a poisoned key',
      '{"format":"monoband-bench.rig","version":1,"title":"x","entries":{"__proto__":{"text":"x"},"constructor":{"text":"x"}}}',
      /does not know/,
    ],
  ])('%s is refused with a reason', (_, text, says) => {
    const reading = readRigFile(text);
    expect(reading.ok).toBe(false);
    if (!reading.ok) expect(reading.reasons.join(' ')).toMatch(says);
  });

  test('no text whatever makes it throw', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json(), fc.constantFrom('null', '1', '"x"')), (text) => {
        expect(readRigFile(text)).toHaveProperty('ok');
      }),
    );
  });

  test('the schema in public/ is the one in force', () => {
    const published = JSON.parse(readFileSync('public/rig.schema.json', 'utf8'));
    expect(published).toEqual(JSON.parse(JSON.stringify(rigFileSchema())));
  });

  test('the examples are marked as invented', () => {
    for (const rig of examples) {
      expect(rig.invented).toBe(true);
      expect(rig.notes).toMatch(/^Invented/);
    }
  });
});
