import { ladderTransfer, TRANSFER_SIZE } from './ladderTransfer.ts';
import type { OutputLadder } from './outputLadder.ts';

const one = new Float64Array(TRANSFER_SIZE);

/**
 * Size of a ladder's transimpedance over frequency.
 *
 * @param ladder branches from source to load
 * @param frequencies Hz
 * @param out receives |load voltage over source current| at each, Ω
 */
export function lowpassResponse(
  ladder: OutputLadder,
  frequencies: Float64Array,
  out: Float64Array,
): void {
  for (let i = 0; i < frequencies.length; i += 1) {
    ladderTransfer(ladder, frequencies[i] ?? 0, one);
    out[i] = Math.hypot(one[0] ?? 0, one[1] ?? 0);
  }
}
