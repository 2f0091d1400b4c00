import { driveSweep } from '../../circuit/power/driveSweep.ts';
import { envelopeDrives, envelopeProducts } from '../../circuit/power/envelopeProducts.ts';
import type { BalanceBench } from '../../circuit/power/harmonicBalance.ts';
import { powerBudget } from '../../circuit/power/powerBudget.ts';
import type { PowerCircuit } from '../../circuit/power/powerCircuit.ts';
import { powerState } from '../../circuit/power/powerState.ts';
import type { OverSupply } from './powerAnswer.ts';

/** Levels of drive at each: products up to the order 11 are kept apart from the third. */
const LEVELS = 6;

/**
 * The stage with unchanged drive and bias on other supply voltages; yields the share done.
 *
 * @param supplies V
 * @param start the state at the planned supply, near which those others lie
 */
export function* overSupply(
  bench: BalanceBench,
  circuit: PowerCircuit,
  drive: number,
  supplies: Float64Array,
  start: Float64Array,
): Generator<number, OverSupply | null, void> {
  const x = Float64Array.from(start);
  const size = supplies.length;
  const power = new Float64Array(size);
  const efficiency = new Float64Array(size);
  const third = new Float64Array(size);
  for (let i = 0; i < size; i += 1) {
    const at = { ...circuit, supply: supplies[i] ?? 0 };
    const state = powerState(bench, at, drive, x, true);
    yield i / size;
    if (!state.converged) return null;
    const budget = powerBudget(at, state);
    power[i] = budget.fundamental;
    efficiency[i] = budget.fundamental / budget.supply;
    const levels = driveSweep(bench, at, envelopeDrives(drive, LEVELS), x);
    let step = levels.next();
    for (; !step.done; step = levels.next()) yield (i + step.value) / size;
    if (step.value.found.includes(0)) return null;
    const { re, im } = step.value;
    const peak = Math.hypot(state.antenna[2] ?? 0, state.antenna[3] ?? 0);
    third[i] = envelopeProducts(re, im, peak, 3).belowPep[0] ?? 0;
  }
  return { supply: supplies, power, efficiency, third };
}
