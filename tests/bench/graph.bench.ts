import { bench, describe } from 'vitest';
import { type Rig, withEntry } from '../../src/engine/rig/document.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';

/** A change of one input, different each time so that nothing is remembered. */
const changes: Readonly<Record<string, (n: number) => readonly [path: string, text: string]>> = {
  'bandwidth, through all stages': (n) => ['filter.bandwidth', String(2200 + (n % 200))],
  'motional inductance, through all stages': (n) => ['quartz.lmGiven', `${29 + (n % 100) / 50}m`],
  'crystals, through all stages': (n) => ['filter.crystals', String(4 + (n % 5))],
  'power, from the plan on': (n) => ['plan.pep', String(1 + (n % 100) / 100)],
  'carrier depth, from the carrier on': (n) => [
    'carrier.attenuationGiven',
    String(18 + (n % 50) / 10),
  ],
  'cutoff of the output filter': (n) => ['output.cutoffRatio', String(1.15 + (n % 100) / 1000)],
  'distance, path and bench': (n) => ['path.distance', `${300 + (n % 400)}k`],
};

describe('one change through the whole graph (aim: 5 ms at the median)', () => {
  for (const [name, change] of Object.entries(changes)) {
    const rig: Rig | undefined = examples[0];
    if (!rig) continue;
    const evaluate = createEvaluator(stages);
    let n = 0;
    bench(name, () => {
      n += 1;
      const [path, text] = change(n);
      evaluate(withEntry(rig, path, text));
    });
  }
});
