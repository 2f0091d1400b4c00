import type { Aligning } from '../../src/engine/circuit/alignedLadder.ts';
import { couplings, type Family } from '../../src/engine/circuit/couplings.ts';
import { type Crystal, crystalOf, seriesResonance } from '../../src/engine/circuit/crystal.ts';
import { ladderForWidth } from '../../src/engine/circuit/ladderForWidth.ts';
import type { Task } from '../../src/engine/errands/choose/task.ts';
import { nearest } from '../../src/engine/quantity/preferred.ts';

/** Crystals as builders meet them: Hz, H, F, and a bandwidth for speech. */
const kinds = [
  [9e6, 0.0145, 3.8e-12, 2500],
  [7.2e6, 0.03, 4e-12, 2400],
  [4.9152e6, 0.07, 4e-12, 2200],
  [14.318e6, 0.0075, 3e-12, 2500],
] as const;
const families: readonly (readonly [Family, number])[] = [
  ['chebyshev', 0.1],
  ['chebyshev', 0.5],
  ['butterworth', 0.1],
];

/** What a random bag and its filter are like, in words. */
export interface RandomBag extends Task {
  readonly says: string;
}

/**
 * A bag of crystals and a filter to make of it, by a seed: spread 20 to 300 Hz rms, Q 50 000 to
 * 150 000 and differing by a fifth, Lm by 1 %, C0 by 2 %.
 */
export function randomBag(
  seed: number,
  count: number,
  poles: readonly number[],
  aligning: Aligning,
): RandomBag {
  const drawn = generator(seed);
  const normal = () => Math.sqrt(-2 * Math.log(drawn())) * Math.cos(2 * Math.PI * drawn());
  const pick = <T>(all: readonly T[]): T => all[Math.floor(drawn() * all.length)] as T;
  const n = pick(poles);
  const spread = 20 * 15 ** drawn();
  const [family, ripple] = pick(families);
  const [fs, lm, c0, width] = pick(kinds);
  const q = 50e3 + 100e3 * drawn();
  const alike = crystalOf(fs, lm, q, c0);
  const crystals = Array.from({ length: count }, () =>
    crystalOf(
      fs + spread * normal(),
      lm * (1 + 0.01 * normal()),
      q * (1 + 0.2 * Math.max(-2, Math.min(2, normal()))),
      c0 * (1 + 0.02 * normal()),
    ),
  ).sort((a: Crystal, b: Crystal) => seriesResonance(a) - seriesResonance(b));
  const fittings = { capacitorQ: 2000, stray: 0 };
  const { ladder, band } = ladderForWidth(alike, couplings(family, n, ripple), fittings, width);
  return {
    crystals,
    alike,
    low: band.low,
    high: band.high,
    design: ladder,
    aligning,
    round: aligning === 'each' ? (c) => nearest(c, 'E12') : (c) => c,
    says: `${n} × ${(fs / 1e6).toFixed(3)} MHz, ${family} ${ripple} dB, spread ${spread.toFixed(0)} Hz`,
  };
}

/** Park and Miller's minimal standard generator, CACM 31, 1988: independent of the program's own. */
function generator(seed: number): () => number {
  let state = (seed * 7919 + 13) % 2_147_483_647;
  const next = () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  for (let i = 0; i < 20; i += 1) next();
  return next;
}
