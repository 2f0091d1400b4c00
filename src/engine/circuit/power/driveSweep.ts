import type { BalanceBench } from './harmonicBalance.ts';
import { powerBudget } from './powerBudget.ts';
import { type PowerCircuit, sidesOf } from './powerCircuit.ts';
import { type PowerState, powerState } from './powerState.ts';

/** A power stage over its drive: what the output's size (AM–AM) and phase (AM–PM) do. */
export interface DriveSweep {
  /** Open voltage of the driver, V peak. */
  readonly drive: Float64Array;
  /** Voltage at the load at the fundamental, Re and Im against the driver's, V peak. */
  readonly re: Float64Array;
  readonly im: Float64Array;
  /** Direct collector current A, heat W: all transistors together. */
  readonly current: Float64Array;
  readonly heat: Float64Array;
  /** 1 where the state was found, 0 where not: then the other figures are the last good ones. */
  readonly found: Uint8Array;
}

/**
 * One steady state after the other, each from the one before; yields the share done.
 *
 * @param drives open voltages of the driver, V peak, rising or falling
 * @param start the state at a drive near the first, if there is one
 */
export function* driveSweep(
  bench: BalanceBench,
  circuit: PowerCircuit,
  drives: Float64Array,
  start: Float64Array | null = null,
): Generator<number, DriveSweep, void> {
  const blank = () => new Float64Array(drives.length);
  const sweep = {
    drive: drives,
    re: blank(),
    im: blank(),
    current: blank(),
    heat: blank(),
    found: new Uint8Array(drives.length),
  };
  const x = start ? Float64Array.from(start) : new Float64Array(2 * bench.fine.width);
  let last: PowerState | null = null;
  let before: Float64Array | null = null;
  for (let i = 0; i < drives.length; i += 1) {
    // Straight on from the two states before.
    const here = Float64Array.from(x);
    if (last && before) {
      const ahead =
        ((drives[i] ?? 0) - (drives[i - 1] ?? 0)) / ((drives[i - 1] ?? 0) - (drives[i - 2] ?? 0));
      for (let n = 0; n < x.length; n += 1) {
        x[n] = (here[n] ?? 0) + ahead * ((here[n] ?? 0) - (before[n] ?? 0));
      }
    }
    const state: PowerState = powerState(
      bench,
      circuit,
      drives[i] ?? 0,
      x,
      last !== null || (i === 0 && start !== null),
    );
    before = last ? here : null;
    if (state.converged) last = state;
    else {
      before = null;
      last = null;
    }
    sweep.found[i] = state.converged ? 1 : 0;
    sweep.re[i] = state.converged ? (state.antenna[2] ?? 0) : (sweep.re[i - 1] ?? 0);
    sweep.im[i] = state.converged ? (state.antenna[3] ?? 0) : (sweep.im[i - 1] ?? 0);
    sweep.current[i] = state.converged
      ? sidesOf(circuit) * (state.collectorCurrent[0] ?? 0)
      : (sweep.current[i - 1] ?? 0);
    sweep.heat[i] = state.converged
      ? powerBudget(circuit, state).transistor
      : (sweep.heat[i - 1] ?? 0);
    yield (i + 1) / drives.length;
  }
  return sweep;
}
