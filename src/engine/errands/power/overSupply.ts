import type { BalanceBench } from '../../circuit/power/harmonicBalance.ts';
import { powerBudget } from '../../circuit/power/powerBudget.ts';
import type { PowerCircuit } from '../../circuit/power/powerCircuit.ts';
import { powerState } from '../../circuit/power/powerState.ts';
import type { OverSupply } from './powerAnswer.ts';

/** Supply voltages over the planned one: 9 to 15 V for 12 V. */
const SHARES = [0.75, 10 / 12, 11 / 12, 1, 13 / 12, 14 / 12, 1.25] as const;

/** The stage with unchanged drive and bias on other supply voltages; yields the share done. */
export function* overSupply(
  bench: BalanceBench,
  circuit: PowerCircuit,
  drive: number,
  start: Float64Array,
): Generator<number, OverSupply | null, void> {
  const x = Float64Array.from(start);
  const size = SHARES.length;
  const supply = Float64Array.from(SHARES, (share) => share * circuit.supply);
  const power = new Float64Array(size);
  const efficiency = new Float64Array(size);
  for (let i = 0; i < size; i += 1) {
    const at = { ...circuit, supply: supply[i] ?? 0 };
    const state = powerState(bench, at, drive, x, true);
    yield (i + 1) / size;
    if (!state.converged) return null;
    const budget = powerBudget(at, state);
    power[i] = budget.fundamental;
    efficiency[i] = budget.fundamental / budget.supply;
  }
  return { supply, power, efficiency };
}
