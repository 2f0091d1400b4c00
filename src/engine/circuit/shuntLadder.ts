import type { Couplings } from './couplings.ts';
import type { Crystal } from './crystal.ts';
import { type Fittings, meshSums } from './crystalLadder.ts';
import type { Ladder } from './ladder.ts';
import { frequencyAtSusceptance } from './susceptanceSpan.ts';

/**
 * A ladder of alike crystals to ground by the susceptance method, with exact values: the dual of
 * `crystalLadder`.
 *
 * Coupling susceptance h·k from node to node; node i carries the sum a(i) of the k on its two sides;
 * the node with the largest sum needs no capacitor across its crystal, each other one of susceptance
 * h(a − a(i)); end conductance h/q. Susceptances are set at the frequency where the nodes resonate,
 * −B = h·a.
 *
 * Each crystal shorts its node at fs: that makes the lower skirt steep. Far away on either side all
 * that is left is a chain of capacitors, which stops the less, the smaller `across` and stray are
 * against the couplings.
 *
 * @param couplings with one crystal at each position
 * @param h half the span of the crystal's susceptance over the passband, S
 * @param across capacitance fitted across every crystal, F: as more C0 it lowers fp, so that the
 *   same width takes larger coupling capacitors
 */
export function shuntLadder(
  crystal: Crystal,
  couplings: Couplings,
  h: number,
  { capacitorQ, stray }: Fittings,
  across = 0,
): Ladder {
  const { k, qSource, qLoad } = couplings;
  const sums = meshSums(couplings);
  const largest = Math.max(...sums);
  const whole = { ...crystal, c0: crystal.c0 + stray + across };
  const w = 2 * Math.PI * frequencyAtSusceptance(whole, h * largest);
  const all = (value: number) => new Float64Array(sums.length).fill(value);
  const align = (less: number) => (less < 1e-9 ? 0 : (h * less) / w);
  return {
    form: 'shunt',
    lm: all(crystal.lm),
    cm: all(crystal.cm),
    rm: all(crystal.rm),
    c0: all(crystal.c0),
    series: Float64Array.from(sums, (a) => across + align(largest - a)),
    coupling: Float64Array.from(k, (one) => (h * one) / w),
    stray: all(stray),
    capacitorQ,
    endC: [0, 0],
    leakage: 0,
    source: [qSource / h, 0],
    load: [qLoad / h, 0],
  };
}
