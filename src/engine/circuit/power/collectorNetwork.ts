import { ladderTransfer, TRANSFER_SIZE } from '../ladderTransfer.ts';
import type { OutputLadder } from '../outputLadder.ts';
import type { CollectorNetwork } from './powerCircuit.ts';

/**
 * A ladder as the collector meets it at each harmonic.
 *
 * @param ladder its source's own resistance and capacitance are left out: the transistor brings its own
 * @param frequency fundamental, Hz
 * @param harmonics highest harmonic
 */
export function collectorNetwork(
  ladder: OutputLadder,
  frequency: number,
  harmonics: number,
): CollectorNetwork {
  const alone: OutputLadder = {
    ...ladder,
    sourceResistance: Number.POSITIVE_INFINITY,
    sourceCapacitance: 0,
  };
  const input = new Float64Array(2 * (harmonics + 1));
  const transfer = new Float64Array(2 * (harmonics + 1));
  const at = new Float64Array(TRANSFER_SIZE);
  for (let k = 1; k <= harmonics; k += 1) {
    ladderTransfer(alone, k * frequency, at);
    transfer[2 * k] = at[0] ?? 0;
    transfer[2 * k + 1] = at[1] ?? 0;
    input[2 * k] = at[2] ?? 0;
    input[2 * k + 1] = at[3] ?? 0;
  }
  return { input, transfer, load: ladder.load };
}
