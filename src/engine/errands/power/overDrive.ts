import { type DriveSweep, driveSweep } from '../../circuit/power/driveSweep.ts';
import { envelopeDrives, envelopeProducts } from '../../circuit/power/envelopeProducts.ts';
import type { BalanceBench } from '../../circuit/power/harmonicBalance.ts';
import { powerBudget } from '../../circuit/power/powerBudget.ts';
import { type PowerCircuit, sidesOf } from '../../circuit/power/powerCircuit.ts';
import type { PowerState } from '../../circuit/power/powerState.ts';
import type { OverDrive, TwoTones } from './powerAnswer.ts';

/** Levels of drive: products of two tones up to the order 29 are kept apart by them. */
const LEVELS = 15;
const ORDERS = [3, 5, 7] as const;

/**
 * The stage at fifteen levels of drive below a state: its curve, and what two tones make of it.
 * Yields the share done.
 *
 * @param start unknowns of that state
 *
 * @return null where one of the levels has no steady state that could be found
 */
export function* overDrive(
  bench: BalanceBench,
  circuit: PowerCircuit,
  top: PowerState,
  start: Float64Array,
): Generator<number, { readonly curve: OverDrive; readonly tones: TwoTones } | null, void> {
  const sweep = yield* driveSweep(bench, circuit, envelopeDrives(top.drive, LEVELS), start);
  if (sweep.found.includes(0)) return null;
  const { load } = circuit.network;
  const peak = Math.hypot(top.antenna[2] ?? 0, top.antenna[3] ?? 0);
  const products = envelopeProducts(sweep.re, sweep.im, peak, ORDERS.at(-1) ?? 3);
  return {
    curve: curveOf(circuit, sweep, top),
    tones: {
      orders: ORDERS,
      belowPep: products.belowPep,
      belowTone: products.belowTone,
      power: (products.mean * peak ** 2) / (2 * load),
      // The levels are those at which an envelope is found at even times.
      current: sweep.current.reduce((sum, i) => sum + i, 0) / LEVELS,
    },
  };
}

/** Levels in rising order, full drive the last. */
function curveOf(circuit: PowerCircuit, sweep: DriveSweep, top: PowerState): OverDrive {
  const { load } = circuit.network;
  const size = LEVELS + 1;
  const blank = () => new Float64Array(size);
  const curve = {
    drive: blank(),
    power: blank(),
    gain: blank(),
    phase: blank(),
    current: blank(),
    dissipation: blank(),
  };
  const topRe = top.antenna[2] ?? 0;
  const topIm = top.antenna[3] ?? 0;
  const full = topRe ** 2 + topIm ** 2;
  for (let i = 0; i < size; i += 1) {
    const at = LEVELS - 1 - i;
    const last = i === LEVELS;
    const re = last ? topRe : (sweep.re[at] ?? 0);
    const im = last ? topIm : (sweep.im[at] ?? 0);
    const share = (last ? top.drive : (sweep.drive[at] ?? 0)) / top.drive;
    const out = re ** 2 + im ** 2;
    curve.drive[i] = 20 * Math.log10(share);
    curve.power[i] = out / (2 * load);
    curve.gain[i] = 10 * Math.log10(out / full / share ** 2);
    curve.phase[i] = Math.atan2(im * topRe - re * topIm, re * topRe + im * topIm);
    curve.current[i] = last
      ? sidesOf(circuit) * (top.collectorCurrent[0] ?? 0)
      : (sweep.current[at] ?? 0);
    curve.dissipation[i] = last ? powerBudget(circuit, top).transistor : (sweep.heat[at] ?? 0);
  }
  return curve;
}
