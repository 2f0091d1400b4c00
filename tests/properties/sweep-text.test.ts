import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chooseSweep } from '../../src/engine/stages/sweep/chooseSweep.ts';
import { readSweepText } from '../../src/engine/stages/sweep/readSweepText.ts';

const count = fc.option(fc.integer({ min: 1, max: 12 }), { nil: null });
const choice = fc.record({
  frequency: count,
  level: count,
  second: count,
  reads: fc.constantFrom('auto', 'dB', 'voltage', 'dBAngle', 'voltageAngle', 'parts'),
  unit: fc.constantFrom('auto', 'Hz', 'kHz', 'MHz', 'GHz'),
} as const);

const piece = fc.oneof(
  fc.string({ maxLength: 8 }),
  fc.double().map(String),
  fc.integer({ min: -200, max: 200 }).map(String),
  fc.constantFrom(
    '#',
    '# MHz S DB R 50',
    '!',
    '[Version] 2.0',
    '[',
    'NaN',
    'inf',
    '-',
    '1e999',
    '٣',
  ),
);
const separator = fc.constantFrom(' ', ',', ';', '\t', ', ', '\n', '\r\n', '\n');
const text = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc
    .array(fc.tuple(piece, separator), { maxLength: 60 })
    .map((pieces) => pieces.map(([a, b]) => a + b).join('')),
);

test('whatever the text and the choice, columns are of one length and the sweep is in order', () => {
  fc.assert(
    fc.property(text, choice, (any, chosen) => {
      const read = readSweepText(any);
      const lengths = new Set(read.columns.map(({ values }) => values.length));
      expect(lengths.size).toBeLessThanOrEqual(1);
      const sweep = chooseSweep(read, chosen);
      if (sweep === null) return;
      sweep.frequency.forEach((f, i) => {
        expect(f).toBeGreaterThanOrEqual(sweep.frequency[i - 1] ?? 0);
        expect(Number.isFinite(f) && Number.isFinite(sweep.level[i])).toBe(true);
        if (sweep.phase) expect(Number.isFinite(sweep.phase[i])).toBe(true);
      });
    }),
    { numRuns: 2000 },
  );
});
