import type { LadderBranch, OutputLadder } from '../../circuit/outputLadder.ts';
import type { TurnsRatio } from '../../circuit/turnsRatio.ts';
import type { Fitted } from './fitParts.ts';

/** The network as a ladder for analysis: every part with its own Q, coils with what lies across. */
export function ladderOf(
  parts: readonly Pick<Fitted, 'part' | 'value' | 'q' | 'own'>[],
  turns: TurnsRatio | null,
  { antenna, nominal }: { readonly antenna: number; readonly nominal: number },
  sourceResistance: number,
): OutputLadder {
  const branches: LadderBranch[] = [];
  for (const { part, value, q, own } of parts) {
    const last = branches.at(-1);
    if (part.kind === 'across' && last) {
      const c = last.c + value;
      // The coil's own capacitance takes no share in the loss.
      branches[branches.length - 1] = { ...last, c, qc: (q * c) / value };
    } else if (part.kind === 'coil') {
      branches.push({ place: 'series', l: value, c: own, ql: q, qc: Number.POSITIVE_INFINITY });
    } else {
      branches.push({ place: 'shunt', l: 0, c: value, ql: Number.POSITIVE_INFINITY, qc: q });
    }
  }
  return {
    branches,
    ratio: turns?.ratio ?? 1,
    sourceResistance,
    sourceCapacitance: 0,
    load: antenna,
    reference: nominal,
  };
}

/** Place among the ladder's branches of every part: a capacitor across a coil shares the coil's. */
export function branchOf(kinds: readonly ('capacitor' | 'coil' | 'across')[]): number[] {
  let at = -1;
  return kinds.map((kind) => (kind === 'across' ? at : ++at));
}
