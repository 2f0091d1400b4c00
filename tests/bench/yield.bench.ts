import { bench, describe } from 'vitest';
import { finish } from '../../src/engine/errands/drive.ts';
import { yieldAnswer } from '../../src/engine/errands/yield/yieldAnswer.ts';
import { type YieldOrder, yieldShare } from '../../src/engine/errands/yield/yieldShare.ts';
import { orderFor } from '../reference/yield/order.ts';

const spreads = {
  capacitors: 0.05,
  capacitorShape: 'even',
  frequency: 50,
  frequencyShape: 'normal',
  lm: 0.01,
  rm: 0.2,
  c0: 0.03,
  ends: 0.05,
} as const;
const mask = {
  widthLeast: 2280,
  widthMost: 2520,
  ripple: 1,
  loss: 3,
  carrier: null,
  opposite: null,
};
const order: YieldOrder = { ...orderFor(8), spreads, mask, builds: 10_000 };
const share = (index: number, of: number, what = order) => finish(yieldShare(what, { index, of }));
const halves = [share(0, 2), share(1, 2)];
const quick = { iterations: 5, time: 500, warmupIterations: 1, warmupTime: 0 };

// To be shown: ten thousand builds of eight crystals at 201 points in a second, on two workers.
describe('ten thousand builds of eight crystals at 201 points', () => {
  bench('half of them, as one of two workers does', () => void share(0, 2), quick);
  bench('putting the halves together, on the page', () => void yieldAnswer(halves), quick);
  bench(
    'half of them without a mask, so without trials',
    () => {
      const blank = { widthLeast: null, widthMost: null, ripple: null, loss: null };
      share(0, 2, { ...order, mask: { ...mask, ...blank } });
    },
    quick,
  );
  bench(
    'half of them with leakage past the filter',
    () => {
      share(0, 2, { ...order, ladder: { ...order.ladder, leakage: 1e-15 } });
    },
    quick,
  );
});
