import { denseSolve } from '../denseSolve.ts';
import { addSpectrum, type BalanceDesk, waveOf } from './balanceDesk.ts';
import {
  balanceJacobian,
  balanceResidual,
  E_SIZE,
  type Surroundings,
  voltageLoss,
} from './balanceStep.ts';
import { type GummelPoon, gummelPoon, VOLT_PER_KELVIN } from './gummelPoon.ts';

/** How an attempt ended. */
export interface Attempt {
  readonly converged: boolean;
  /** What is left of Kirchhoff's voltage law, root of the sum of all harmonics' squares, V. */
  readonly residual: number;
  readonly iterations: number;
}

/** Residual below which a state is an answer, V. */
export const TOLERANCE = 1e-8;

/**
 * Newton's method on the harmonics, from what stands in x.
 *
 * A step may carry a junction volts beyond what its exponential bears. So each sample of the two
 * voltages at which the transistor is made linear rises, as in simulators of the time domain, by
 * the logarithm of the step that was asked; where no sample is held back it is Newton's own step.
 *
 * @param x unknowns as `BalanceDesk` says; receives the state where it ended
 * @param most iterations before it gives up
 * @param settled change of any sample below which it ends, V
 * @return with currents and waveforms of x in the desk
 *
 * Source of the holding back: Nagel, SPICE2, ERL-M520 (1975), section 5 (from memory).
 */
export function balanceNewton(
  desk: BalanceDesk,
  model: GummelPoon,
  around: Surroundings,
  x: Float64Array,
  most: number,
  settled = 1e-6,
): Attempt {
  const { waves, width, heldE, heldC, matrix, step } = desk;
  const vt = VOLT_PER_KELVIN * model.temperature;
  const critical = vt * Math.log(vt / (Math.SQRT2 * model.is));
  waveOf(desk, x, 0, heldE);
  waveOf(desk, x, width, heldC);
  let iterations = 0;
  let change = Number.POSITIVE_INFINITY;
  while (!(change < settled) && iterations < most) {
    iterations += 1;
    waves.vbe.set(heldE);
    waves.vbc.set(heldC);
    gummelPoon(model, waves);
    balanceJacobian(desk, around);
    currentsAtNothing(desk, around.frequency);
    sources(desk, around, step);
    if (!denseSolve(matrix, step, 2 * width)) break;
    x.set(step);
    waveOf(desk, x, 0, waves.vbe);
    waveOf(desk, x, width, waves.vbc);
    change = Math.max(
      followed(waves.vbe, heldE, vt * model.nf, critical),
      followed(waves.vbc, heldC, vt * model.nr, critical),
    );
  }
  const residual = Math.sqrt(balanceResidual(desk, model, around, x));
  return { converged: change < settled && residual < ON_THE_WAY, residual, iterations };
}

/** What a state on the way to the answer may leave, V; the answer itself is held to TOLERANCE. */
const ON_THE_WAY = 0.1;

/** Spectrum of what the tangents of all currents and charges give at zero volts. */
function currentsAtNothing(desk: BalanceDesk, frequency: number): void {
  const { waves: w, samples, harmonics, width, current } = desk;
  for (let n = 0; n < samples; n += 1) {
    const e = w.vbe[n] ?? 0;
    const c = w.vbc[n] ?? 0;
    w.ibe[n] = (w.ibe[n] ?? 0) - (w.gee[n] ?? 0) * e - (w.gec[n] ?? 0) * c;
    w.ibc[n] = (w.ibc[n] ?? 0) - (w.gce[n] ?? 0) * e - (w.gcc[n] ?? 0) * c;
    w.qbe[n] = (w.qbe[n] ?? 0) - (w.cee[n] ?? 0) * e - (w.cec[n] ?? 0) * c;
    w.qbc[n] = (w.qbc[n] ?? 0) - (w.ccc[n] ?? 0) * c;
  }
  current.fill(0);
  addSpectrum(desk, w.ibe, 0, current, 0);
  addSpectrum(desk, w.ibc, 0, current, width);
  if (harmonics === 0) return;
  addSpectrum(desk, w.qbe, 2 * Math.PI * frequency, current, 0);
  addSpectrum(desk, w.qbc, 2 * Math.PI * frequency, current, width);
}

/** Right side: the sources less what those currents lose on the way. */
function sources(desk: BalanceDesk, around: Surroundings, out: Float64Array): void {
  const { harmonics, width } = desk;
  voltageLoss(desk, around, out);
  for (let k = 0; k <= harmonics; k += 1) {
    const at = k === 0 ? 0 : 2 * k - 1;
    for (let p = 0; p < 2; p += 1) {
      const n = p * width + at;
      const s = k * E_SIZE + 2 * p;
      out[n] = (around.e[s] ?? 0) - (out[n] ?? 0);
      if (k > 0) out[n + 1] = (around.e[s + 1] ?? 0) - (out[n + 1] ?? 0);
    }
  }
}

/** Lets the held voltages follow the asked ones as far as they may; answers the greatest difference, V. */
function followed(asked: Float64Array, held: Float64Array, vt: number, critical: number): number {
  let greatest = 0;
  for (let n = 0; n < held.length; n += 1) {
    const v = asked[n] ?? 0;
    const old = held[n] ?? 0;
    const rise = v - old;
    greatest = Math.max(greatest, Math.abs(rise));
    if (v <= critical || Math.abs(rise) <= 2 * vt) held[n] = v;
    else if (old <= 0) held[n] = vt * Math.log(v / vt);
    else held[n] = rise > -vt ? old + vt * Math.log1p(rise / vt) : critical;
  }
  return Number.isNaN(greatest) ? Number.POSITIVE_INFINITY : greatest;
}
