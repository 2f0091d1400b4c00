import { INSIDE_SIZE, ladderTransfer, TRANSFER_SIZE } from '../../circuit/ladderTransfer.ts';
import type { TurnsRatio } from '../../circuit/turnsRatio.ts';
import { branchOf, ladderOf } from './ladderOf.ts';
import type { Part } from './part.ts';

const out = new Float64Array(TRANSFER_SIZE);

/** A Q at which parts have no loss to speak of. */
const LOSSLESS = 1e6;

/**
 * Voltage across every part as designed at full power, V rms: what cores are chosen by.
 *
 * @param pep at the antenna, W
 */
export function partVolts(
  parts: readonly Part[],
  turns: TurnsRatio | null,
  at: { readonly antenna: number; readonly nominal: number; readonly pep: number },
): number[] {
  const fitted = parts.map((part) => ({ part, value: part.exact, q: LOSSLESS, own: 0 }));
  const ladder = ladderOf(fitted, turns, at, Number.POSITIVE_INFINITY);
  const inside = new Float64Array(ladder.branches.length * INSIDE_SIZE);
  ladderTransfer(ladder, at.nominal, out, inside);
  const scale = Math.sqrt(at.pep * at.antenna) / Math.hypot(out[0] ?? 0, out[1] ?? 0);
  return branchOf(parts.map(({ kind }) => kind)).map((branch) => {
    const k = branch * INSIDE_SIZE;
    return scale * Math.hypot(inside[k] ?? 0, inside[k + 1] ?? 0);
  });
}
