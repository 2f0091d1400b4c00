import { chainWaves, WAVES_SIZE } from '../../circuit/mismatch/chainWaves.ts';
import { CHAIN_SIZE, networkChain } from '../../circuit/mismatch/networkChain.ts';
import type { MismatchSeen } from './seen.ts';

/** The network at the operating frequency and each harmonic, as waves. */
export interface Followed {
  /** Eight numbers an order, the fundamental first: of the network alone. */
  readonly alone: Float64Array;
  /** The same with the collector's own resistance across it. */
  readonly loaded: Float64Array;
  readonly orders: number;
}

/** The network at the operating frequency and every harmonic that the final makes. */
export function follow(seen: MismatchSeen): Followed {
  const orders = Math.max(1, seen.harmonicCurrents.length - 1);
  const chain = new Float64Array(orders * CHAIN_SIZE);
  const alone = new Float64Array(orders * WAVES_SIZE);
  const loaded = new Float64Array(orders * WAVES_SIZE);
  const across = seen.outputImpedance === null ? 0 : seen.antenna / seen.outputImpedance;
  for (let n = 1; n <= orders; n += 1) {
    const at = (n - 1) * CHAIN_SIZE;
    networkChain(seen.ladder, n * seen.nominal, chain, at);
    chainWaves(chain, 0, alone, at);
    chainWaves(chain, across, loaded, at);
  }
  return { alone, loaded, orders };
}

/** Size of the reflection at a standing-wave ratio. */
export const rhoOf = (swr: number): number => (swr - 1) / (swr + 1);
