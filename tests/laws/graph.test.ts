import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { emptyRig, type Rig, withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { fieldAt } from '../../src/engine/rig/fieldAt.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { inputFields, randomRig, textFor } from './randomRig.ts';

const edit = fc
  .constantFrom(...inputFields)
  .chain(([path, field]) =>
    fc
      .oneof({ weight: 4, arbitrary: textFor(field) }, fc.constantFrom('', '?!', '-1', '1e99'))
      .map((text) => [path, text] as const),
  );
const edits = fc.array(edit, { minLength: 1, maxLength: 8 });

const apply = (rig: Rig, list: readonly (readonly [string, string])[]) =>
  list.reduce((r, [path, text]) => withEntry(r, path, text), rig);

const bare = (path: string) => path.replace(/\?$/, '');

describe('the graph', () => {
  test('G1 an evaluator with a past answers as a fresh one does', () => {
    fc.assert(
      fc.property(randomRig, edits, (rig, list) => {
        const evaluate = createEvaluator(stages);
        evaluate(rig);
        let now = rig;
        for (const [path, text] of list) {
          now = withEntry(now, path, text);
          evaluate(now);
        }
        expect(evaluate(now)).toEqual(createEvaluator(stages)(now));
      }),
      { numRuns: 30 },
    );
  });

  test('G2 a stage runs at most once an evaluation', () => {
    fc.assert(
      fc.property(randomRig, edit, (rig, [path, text]) => {
        const runs: string[] = [];
        const evaluate = createEvaluator(stages, undefined, (key) => runs.push(key));
        evaluate(rig);
        expect(new Set(runs).size).toBe(runs.length);
        runs.length = 0;
        evaluate(withEntry(rig, path, text));
        expect(new Set(runs).size).toBe(runs.length);
      }),
      { numRuns: 20 },
    );
  });

  test('G3 what is not reached is not run and stays the same object', () => {
    for (const rig of examples) {
      const runs: string[] = [];
      const evaluate = createEvaluator(stages, undefined, (key) => runs.push(key));
      const before = evaluate(rig);
      runs.length = 0;
      const again = evaluate({ ...rig, title: 'other title' });
      expect(runs).toEqual([]);
      for (const key of Object.keys(before.stages)) {
        expect(again.stages[key]).toBe(before.stages[key]);
      }
      const changed = evaluate(withEntry(rig, 'plan.pep', '1.5'));
      for (const key of ['quartz', 'filter', 'carrier']) {
        if (before.stages[key]) expect(changed.stages[key]).toBe(before.stages[key]);
      }
      expect(runs).toContain('plan');
    }
  });

  test('G4 a stage reads only itself and earlier stages, and only what exists', () => {
    const earlier = new Set<string>();
    for (const stage of stages) {
      const own = stage.fields.key;
      for (const path of Object.values(stage.reads).map(bare)) {
        const [owner = '', key = ''] = path.split('.');
        expect(fieldAt(path), `${own} reads ${path}`).toBeDefined();
        if (owner === own) expect(Object.keys(stage.fields.inputs)).toContain(key);
        else expect([...earlier], `${own} reads ${path}`).toContain(owner);
      }
      earlier.add(own);
    }
  });

  test('G5 work is deterministic and never writes to what it is given', () => {
    const freeze = (value: unknown): unknown => {
      if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return value;
      for (const part of Object.values(value)) freeze(part);
      return Object.freeze(value);
    };
    fc.assert(
      fc.property(randomRig, (rig) => {
        const strict = stages.map((stage) => ({
          ...stage,
          work: (seen: Record<string, unknown>) => {
            freeze(seen);
            const copy = structuredClone(seen);
            const first = stage.work(seen);
            expect(seen).toEqual(copy);
            expect(stage.work(seen)).toEqual(first);
            return first;
          },
        }));
        createEvaluator(strict)(rig);
      }),
      { numRuns: 20 },
    );
  });

  test('G6 a problem names a field that exists, and no result is NaN or infinite', () => {
    fc.assert(
      fc.property(randomRig, edits, (rig, list) => {
        const worked = createEvaluator(stages)(apply(rig, list));
        for (const [key, stage] of Object.entries(worked.stages)) {
          for (const problem of stage.problems) {
            expect(fieldAt(problem.field), `${key}: ${problem.field}`).toBeDefined();
            expect(problem.says.length).toBeGreaterThan(8);
            expect(problem.says).not.toMatch(/NaN|undefined|Infinity|\[object/);
          }
          noBadNumber(stage.results, key);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('G7 any order of edits that ends in the same document ends in the same figures', () => {
    fc.assert(
      fc.property(randomRig, edits, (rig, list) => {
        const last = [...new Map(list).entries()];
        const evaluate = createEvaluator(stages);
        const forward = evaluate(apply(rig, last));
        const backward = evaluate(apply(rig, [...last].reverse()));
        expect(backward).toEqual(forward);
      }),
      { numRuns: 20 },
    );
  });

  test('an empty rig is worked without a failure and says where to begin', () => {
    const worked = createEvaluator(stages)(emptyRig());
    expect(worked.stages.plan?.problems[0]?.field).toBe('plan.frequency');
    for (const stage of Object.values(worked.stages)) noBadNumber(stage.results, stage.key);
  });

  test('where a result cannot be given, there is a problem that says why', () => {
    fc.assert(
      fc.property(randomRig, edits, (rig, list) => {
        const worked = createEvaluator(stages)(apply(rig, list));
        for (const stage of Object.values(worked.stages)) {
          if (stage.waitsFor !== null) expect(stage.problems.length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 20 },
    );
  });
});

test('G8 a reading that is not understood stops nothing but itself', () => {
  const [rig] = examples;
  if (!rig) throw new Error('no example');
  for (const [path, field] of inputFields) {
    if (field.kind !== 'quantity' || !field.reading) continue;
    const worked = createEvaluator(stages)(withEntry(rig, path, '28 bananas'));
    const [owner = ''] = path.split('.');
    expect(worked.stages[owner]?.waitsFor, path).toBeNull();
    expect(
      worked.stages[owner]?.problems.some((p) => p.field === path),
      path,
    ).toBe(true);
  }
});

/** In a model, which nobody reads as a figure, a lossless part may have an infinite Q. */
function noBadNumber(value: unknown, at: string): void {
  const isModel = fieldAt(at.split('.').slice(0, 2).join('.'))?.kind === 'model';
  const fits = isModel ? (v: number) => !Number.isNaN(v) : Number.isFinite;
  if (typeof value === 'number') expect(fits(value), at).toBe(true);
  else if (value instanceof Float64Array) {
    for (const v of value) if (!fits(v)) throw new Error(`${at}: ${v} in a curve`);
  } else if (typeof value === 'object' && value !== null) {
    for (const [k, v] of Object.entries(value)) noBadNumber(v, `${at}.${k}`);
  }
}
