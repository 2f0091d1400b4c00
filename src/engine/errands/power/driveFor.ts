import type { BalanceBench } from '../../circuit/power/harmonicBalance.ts';
import type { PowerCircuit } from '../../circuit/power/powerCircuit.ts';
import { type PowerState, powerState } from '../../circuit/power/powerState.ts';

/** Shares of the most drive at which the power is looked at first. */
const SHARES = [0.1, 0.2, 0.35, 0.5, 0.7, 0.85, 1] as const;
/** Drives about a guess that are looked at before the others. */
const ABOUT = [0.94, 1.06] as const;
/** Part of the antenna's voltage to which it is met, and tries until then. */
const CLOSE = 1e-6;
const TRIES = 20;

/** A state, and whether it makes the power wanted; if not, it makes the most that was found. */
export interface Driven {
  readonly state: PowerState;
  readonly full: boolean;
}

/**
 * The least drive that makes a power at the antenna, looked for from below; yields the share of the
 * drives that it has been through.
 *
 * @param power at the fundamental, W
 * @param most open voltage of the driver that is not gone beyond, V peak
 * @param x receives the state
 * @param guess drive that did it under nearly the same conditions, V peak
 * @return null where no steady state was found at all
 */
export function* driveFor(
  bench: BalanceBench,
  circuit: PowerCircuit,
  power: number,
  most: number,
  x: Float64Array,
  guess: number | null = null,
): Generator<number, Driven | null, void> {
  // Against the drive the antenna's voltage is nearly a straight line.
  const aim = Math.sqrt(2 * power * circuit.network.load);
  const volts = ({ antenna }: PowerState) => Math.hypot(antenna[2] ?? 0, antenna[3] ?? 0);
  let best: PowerState | null = null;
  let below = 0;
  let lacks = -aim;
  const tried = guess === null ? [] : ABOUT.map((by) => (by * guess) / most);
  const [, far = 0] = tried;
  for (const share of [...tried, ...SHARES.filter((one) => one > far)]) {
    if (share > 1) continue;
    const drive = share * most;
    const state = powerState(bench, circuit, drive, x, best !== null);
    yield share;
    if (!state.converged) continue;
    const off = volts(state) - aim;
    if (best === null || volts(state) > volts(best)) best = state;
    if (off < 0) {
      below = drive;
      lacks = off;
      continue;
    }
    // False position; an end that stays twice counts half (Dowell & Jarratt, BIT 11 (1971), 168).
    let above = drive;
    let exceeds = off;
    let side = 0;
    for (let i = 0; i < TRIES; i += 1) {
      const between = below + ((above - below) * lacks) / (lacks - exceeds);
      const met = powerState(bench, circuit, between, x, true);
      yield share;
      if (!met.converged) return null;
      const left = volts(met) - aim;
      if (Math.abs(left) < CLOSE * aim) return { state: met, full: true };
      if (left > 0) {
        above = between;
        exceeds = left;
        if (side > 0) lacks /= 2;
      } else {
        below = between;
        lacks = left;
        if (side < 0) exceeds /= 2;
      }
      side = left;
    }
    return null;
  }
  if (best === null) return null;
  const again = powerState(bench, circuit, best.drive, x);
  return again.converged ? { state: again, full: false } : null;
}
