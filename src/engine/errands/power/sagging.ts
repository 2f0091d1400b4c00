import type { BalanceBench } from '../../circuit/power/harmonicBalance.ts';
import { powerBudget } from '../../circuit/power/powerBudget.ts';
import { type PowerCircuit, sidesOf } from '../../circuit/power/powerCircuit.ts';
import { powerState } from '../../circuit/power/powerState.ts';
import type { Sag } from './powerAnswer.ts';

/**
 * The stage with unchanged drive and bias on a supply that has some resistance: its voltage at the
 * final falls with the direct current.
 *
 * @param resistance of battery and leads, Ω
 * @param power without it, W
 * @param start the state without it
 * @return null where the supply is stiff, or no state was found
 */
export function sagging(
  bench: BalanceBench,
  circuit: PowerCircuit,
  drive: number,
  resistance: number,
  power: number,
  start: Float64Array,
): Sag | null {
  if (resistance <= 0) return null;
  const sides = sidesOf(circuit);
  // Each side feels the current of both.
  const soft = { ...circuit, feed: { ...circuit.feed, sag: sides * resistance } };
  const state = powerState(bench, soft, drive, Float64Array.from(start), true);
  if (!state.converged) return null;
  const left = powerBudget(soft, state).fundamental;
  return {
    resistance,
    supply: circuit.supply - resistance * sides * (state.collectorCurrent[0] ?? 0),
    power: left,
    lost: 10 * Math.log10(left / power),
  };
}
