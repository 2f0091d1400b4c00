import { ladderTransfer, TRANSFER_SIZE } from '../../circuit/ladderTransfer.ts';
import type { OutputLadder } from '../../circuit/outputLadder.ts';
import { type Emission, type RuleSetKey, ruleSets } from '../../data/ruleSets.ts';
import type { Outcome } from '../../fields/kinds.ts';

/** Harmonics weaker than this share of the fundamental current are none. */
const NOTHING = 1e-9;

/**
 * Second to highest harmonic at the antenna, against a rule set.
 *
 * @param ladder the network with the collector's own resistance
 * @param currents direct current, fundamental, second … harmonic of the collector, A peak, signed
 * @param fundamentalZ transimpedance at the fundamental, Ω
 * @param rule rule set and what it asks of: operating frequency Hz, PEP W, own figure dB
 * @param wanted margin below which a harmonic is close, dB
 */
export function harmonicRows(
  ladder: OutputLadder,
  currents: readonly number[],
  fundamentalZ: number,
  rule: { readonly key: RuleSetKey } & Pick<Emission, 'power' | 'own' | 'ownLines'>,
  wanted: number,
) {
  const out = new Float64Array(TRANSFER_SIZE);
  const first = Math.abs(currents[1] ?? 0);
  return currents.slice(2).map((signed, i) => {
    const order = i + 2;
    const frequency = order * ladder.reference;
    ladderTransfer(ladder, frequency, out);
    const transimpedance = Math.hypot(out[0] ?? 0, out[1] ?? 0);
    const current = Math.abs(signed);
    const limit = -ruleSets[rule.key].limit({
      frequency,
      fundamental: ladder.reference,
      power: rule.power,
      own: rule.own,
      ownLines: rule.ownLines,
    });
    const there = current > NOTHING * first;
    const level = there
      ? 20 * Math.log10((current * transimpedance) / (first * fundamentalZ))
      : null;
    const margin = level === null ? null : limit - level;
    const outcome: Outcome = margin === null ? 'holds' : outcomeOf(margin, wanted);
    return { order, frequency, current, transimpedance, level, limit, margin, outcome };
  });
}

/** Holds with the margin wanted, close without it, fails below zero. */
export function outcomeOf(margin: number, wanted: number): Outcome {
  if (margin < 0) return 'fails';
  return margin < wanted ? 'close' : 'holds';
}
