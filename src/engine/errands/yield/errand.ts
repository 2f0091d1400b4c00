import type { Seen } from '../../fields/stage.ts';
import { carrierFields } from '../../stages/carrier/fields.ts';
import { filterFields } from '../../stages/filter/fields.ts';
import { planFields } from '../../stages/plan/fields.ts';
import { yieldFields } from '../../stages/yield/fields.ts';
import { errand } from '../errand.ts';
import { yieldAnswer } from './yieldAnswer.ts';
import { type YieldOrder, yieldShare } from './yieldShare.ts';

const of = [planFields, filterFields, carrierFields, yieldFields] as const;

const reads = {
  ladder: 'filter.ladder',
  low: 'filter.low3',
  high: 'filter.high3',
  carrier: 'carrier.frequency?',
  sideband: 'plan.filterSideband',
  widthLeast: 'yield.widthLeast?',
  widthMost: 'yield.widthMost?',
  rippleMost: 'yield.rippleMost?',
  lossMost: 'yield.lossMost?',
  carrierLeast: 'yield.carrierLeast?',
  oppositeLeast: 'yield.oppositeLeast?',
  tolerance: 'yield.tolerance',
  capacitorShape: 'yield.capacitorShape',
  spreadUsed: 'yield.spreadUsed',
  frequencyShape: 'yield.frequencyShape',
  lmSpread: 'yield.lmSpread',
  rmSpread: 'yield.rmSpread',
  c0Spread: 'yield.c0Spread',
  endTolerance: 'yield.endTolerance',
  builds: 'yield.builds',
  seed: 'yield.seed',
} as const;

/** Many builds of the filter as it stands, on as many workers as there are. */
export const yieldErrand = errand({
  key: 'yield',
  of,
  reads,
  work: (seen, share) => yieldShare(orderOf(seen), share),
  split: { shares: 2, merge: yieldAnswer },
});

function orderOf(seen: Seen<(typeof of)[number], typeof reads>): YieldOrder {
  return {
    ladder: seen.ladder,
    low: seen.low,
    high: seen.high,
    carrier:
      seen.carrier === null
        ? null
        : { frequency: seen.carrier, way: seen.sideband === 'lower' ? 1 : -1 },
    spreads: {
      capacitors: seen.tolerance,
      capacitorShape: seen.capacitorShape,
      frequency: seen.spreadUsed,
      frequencyShape: seen.frequencyShape,
      lm: seen.lmSpread,
      rm: seen.rmSpread,
      c0: seen.c0Spread,
      ends: seen.endTolerance,
    },
    mask: {
      widthLeast: seen.widthLeast,
      widthMost: seen.widthMost,
      ripple: seen.rippleMost,
      loss: seen.lossMost,
      carrier: seen.carrierLeast,
      opposite: seen.oppositeLeast,
    },
    builds: seen.builds,
    seed: seen.seed,
  };
}
