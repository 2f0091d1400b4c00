import { couplings } from '../../../src/engine/circuit/couplings.ts';
import { crystalOf } from '../../../src/engine/circuit/crystal.ts';
import { largestSum } from '../../../src/engine/circuit/crystalLadder.ts';
import { ladderForWidth } from '../../../src/engine/circuit/ladderForWidth.ts';
import { spanFrequencies } from '../../../src/engine/circuit/reactanceSpan.ts';
import { perfect } from '../../../src/engine/errands/yield/spreads.ts';
import type { YieldOrder } from '../../../src/engine/errands/yield/yieldShare.ts';

/** An order for builds of a Chebyshev filter of 9 MHz crystals, 14 mH, 3.5 pF. */
export function orderFor(n: number, qu = 100e3, ripple = 0.1): YieldOrder & { around: number[] } {
  const crystal = crystalOf(9e6, 14e-3, qu, 3.5e-12);
  const chain = couplings('chebyshev', n, ripple);
  const made = ladderForWidth(crystal, chain, { capacitorQ: 2000, stray: 0 }, 2400);
  const { low, high } = made.band;
  return {
    ladder: made.ladder,
    low,
    high,
    carrier: { frequency: high + 250, way: 1 },
    spreads: perfect,
    mask: {
      widthLeast: null,
      widthMost: null,
      ripple: null,
      loss: null,
      carrier: null,
      opposite: null,
    },
    builds: 2000,
    seed: 1,
    around: spanFrequencies(crystal, largestSum(chain), made.h, n, 0.6),
  };
}
