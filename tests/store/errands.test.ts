import { describe, expect, test, vi } from 'vitest';
import { CALLED_BACK, drive, finish } from '../../src/engine/errands/drive.ts';
import { errands } from '../../src/engine/errands/list.ts';
import { pick, seenBy } from '../../src/engine/errands/pick.ts';
import { runHere } from '../../src/engine/errands/runHere.ts';
import { emptyRig, withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { fieldAt } from '../../src/engine/rig/fieldAt.ts';
import { stages } from '../../src/engine/rig/stages.ts';

const evaluate = createEvaluator(stages);
const first = examples[0] ?? emptyRig();

function* counting(to: number): Generator<number, string, void> {
  for (let i = 0; i < to; i += 1) yield i / to;
  return 'done';
}

describe('the pace of an errand', () => {
  test('others get their turn between slices, and progress is told', async () => {
    let clock = 0;
    const told: number[] = [];
    const pause = vi.fn(async () => {});
    const answer = await drive(counting(30), {
      now: () => {
        clock += 5;
        return clock;
      },
      pause,
      calledBack: () => false,
      progress: (done) => told.push(done),
    });
    expect(answer).toBe('done');
    expect(pause.mock.calls.length).toBeGreaterThan(5);
    expect(told).toEqual([...told].sort((a, b) => a - b));
  });

  test('called back, it stops at the next slice', async () => {
    const answer = await drive(counting(1e9), {
      now: () => performance.now(),
      pause: async () => {},
      calledBack: () => true,
      progress: () => {},
    });
    expect(answer).toBe(CALLED_BACK);
  });
});

describe('every errand', () => {
  test.each(errands.map((errand) => [errand.key, errand] as const))(
    '%s reads only fields that exist',
    (_, { reads }) => {
      for (const path of Object.values(reads)) {
        expect(fieldAt(path.replace(/\?$/, '')), path).toBeDefined();
      }
    },
  );

  test.each(errands.map((errand) => [errand.key, errand] as const))(
    '%s: what it reads and answers can go to a worker and back',
    (_, errand) => {
      const seen = seenBy(errand, pick(evaluate(first), errand));
      expect(seen).not.toBeNull();
      expect(() => structuredClone(seen)).not.toThrow();
      const parts = Array.from({ length: errand.shares }, (_, index) =>
        finish(errand.work(structuredClone(seen), { index, of: errand.shares })),
      );
      expect(() => structuredClone(parts)).not.toThrow();
      // The same order gives the same answer, split or not.
      const whole = finish(errand.work(seen, { index: 0, of: 1 }));
      expect(errand.merge(parts)).toEqual(errand.merge([whole]));
    },
  );

  test('waits while an entry that it reads is wrong', () => {
    for (const errand of errands) {
      const path = Object.values(errand.reads)
        .map((p) => p.replace(/\?$/, ''))
        .find((p) => ['quantity', 'count'].includes(fieldAt(p)?.kind ?? '') && isInput(p));
      if (path === undefined) continue;
      const worked = evaluate(withEntry(first, path, 'nonsense'));
      expect(seenBy(errand, pick(worked, errand)), `${errand.key} with ${path}`).toBeNull();
    }
  });

  test('an errand that does not exist says so', () => {
    const told = { progress: vi.fn(), answer: vi.fn(), failed: vi.fn() };
    expect(() => runHere('nonsense', {}, told)).toThrow(/no errand/);
  });
});

const isInput = (path: string) => {
  const [key = '', name = ''] = path.split('.');
  return name in (stages.find((s) => s.fields.key === key)?.fields.inputs ?? {});
};
