import { bench, describe } from 'vitest';
import { arrange } from '../../src/engine/errands/choose/arrange.ts';
import { buy } from '../../src/engine/errands/choose/buy.ts';
import { chooseErrand } from '../../src/engine/errands/choose/errand.ts';
import { finish } from '../../src/engine/errands/drive.ts';
import { pick, seenBy } from '../../src/engine/errands/pick.ts';
import { createEvaluator } from '../../src/engine/rig/evaluate.ts';
import { exampleBags } from '../../src/engine/rig/exampleBags.ts';
import { examples } from '../../src/engine/rig/examples.ts';
import { stages } from '../../src/engine/rig/stages.ts';
import { workBag } from '../../src/engine/stages/bag/work.ts';
import { randomBag } from '../properties/randomBag.ts';

describe('from a bag of 30', () => {
  const four = randomBag(1, 30, [4], 'design');
  const eight = randomBag(2, 30, [8], 'design');
  const each = randomBag(2, 30, [8], 'each');
  bench('4 crystals chosen and put in order', () => void finish(arrange(four, 1)));
  bench('8 crystals', () => void finish(arrange(eight, 1)));
  bench('8 crystals, a capacitor for each', () => void finish(arrange(each, 1)));
});

describe('the whole errand on the first example', () => {
  const rig = examples[0];
  if (!rig) throw new Error('no example');
  const worked = createEvaluator(stages)(rig);
  const seen = seenBy(chooseErrand, pick(worked, chooseErrand));
  bench('6 of 24, the Filter sheet’s own figures for the finalists, and the carrier', () => {
    finish(chooseErrand.work(seen, { index: 0, of: 1 }));
  });
});

describe('beside it', () => {
  const wanted = { set: 6, window: 240, confidence: 0.9 };
  bench('how many to buy, 4000 lots', () => {
    finish(buy(wanted, { kind: 'normal', spread: 200 }, 1));
  });
  bench('a list of 24 read', () => {
    workBag({ crystals: exampleBags.forty });
  });
  const long = Array.from({ length: 200 }, (_, i) => `X${i};${7_198_000 + 3 * i};30.1;20;4.1`);
  bench('a list of 200 read', () => {
    workBag({ crystals: long.join('\n') });
  });
});
