import { bench, describe } from 'vitest';
import { finish } from '../../src/engine/errands/drive.ts';
import { pick, seenBy } from '../../src/engine/errands/pick.ts';
import { suggestErrand } from '../../src/engine/errands/suggest/errand.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { follow } from '../../src/engine/stages/mismatch/followed.ts';
import { mismatch } from '../../src/engine/stages/mismatch/stage.ts';

describe('output', () => {
  const rig = examples[0];
  if (!rig) throw new Error('no example');
  const worked = createEvaluator(stages)(rig);
  const seen = seenBy(suggestErrand, pick(worked, suggestErrand));
  bench('all networks built, worked and put in order', () => {
    finish(suggestErrand.work(seen, { index: 0, of: 1 }));
  });
  const round = seenBy(mismatch, pick(worked, mismatch)) as Parameters<typeof follow>[0];
  bench('four ratios once round', () => void mismatch.work(round));
  bench('the network at the fundamental and nine harmonics', () => void follow(round));
});
