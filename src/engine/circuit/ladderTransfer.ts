import type { OutputLadder } from './outputLadder.ts';

/** Numbers that `ladderTransfer` writes for the ladder as a whole. */
export const TRANSFER_SIZE = 4;

/** Numbers that `ladderTransfer` writes to `inside` for each branch. */
export const INSIDE_SIZE = 4;

/**
 * Transimpedance and input impedance of a ladder at one frequency, and what happens inside.
 *
 * One volt at the load is followed back to the source: each shunt branch adds its current, each
 * series branch its voltage. That is exact for any ladder.
 *
 * Coil: R + jωL with R = (ω₀L/Q)·√(ω/ω₀), a capacitor of its own across it; capacitor: admittance
 * ωC(1/Q + j). Ideal transformer at the source end.
 *
 * @param ladder branches from source to load
 * @param frequency Hz, above zero
 * @param out receives Re, Im of load voltage over source current, Ω; Re, Im of the impedance that
 *   the ladder shows at the source (source's own resistance and capacitance left out), Ω
 * @param inside if given, receives per branch in order Re, Im of its voltage for 1 A of source
 *   current (Ω), and Re, Im of its current (plain ratio)
 */
export function ladderTransfer(
  ladder: OutputLadder,
  frequency: number,
  out: Float64Array,
  inside?: Float64Array,
): void {
  const { branches, ratio, sourceResistance, sourceCapacitance, load, reference } = ladder;
  const w = 2 * Math.PI * frequency;
  const w0 = 2 * Math.PI * reference;
  const skin = Math.sqrt(frequency / reference);
  let vr = 1;
  let vi = 0;
  let ir = 1 / load;
  let ii = 0;
  for (let k = branches.length - 1; k >= 0; k -= 1) {
    const branch = branches[k];
    if (branch === undefined) continue;
    const { place, l, c, ql, qc } = branch;
    // Admittance of the branch: coil and capacitor side by side.
    let g = (w * c) / qc;
    let b = w * c;
    if (l > 0) {
      const r = (w0 * l * skin) / ql;
      const x = w * l;
      const size = r * r + x * x;
      g += r / size;
      b -= x / size;
    }
    let ur = vr;
    let ui = vi;
    let jr = ir;
    let ji = ii;
    if (place === 'shunt') {
      jr = vr * g - vi * b;
      ji = vr * b + vi * g;
      ir += jr;
      ii += ji;
    } else {
      const size = g * g + b * b;
      ur = (ir * g + ii * b) / size;
      ui = (ii * g - ir * b) / size;
      vr += ur;
      vi += ui;
    }
    if (inside) {
      inside[k * INSIDE_SIZE] = ur;
      inside[k * INSIDE_SIZE + 1] = ui;
      inside[k * INSIDE_SIZE + 2] = jr;
      inside[k * INSIDE_SIZE + 3] = ji;
    }
  }
  vr /= ratio;
  vi /= ratio;
  ir *= ratio;
  ii *= ratio;
  const size = ir * ir + ii * ii;
  out[2] = (vr * ir + vi * ii) / size;
  out[3] = (vi * ir - vr * ii) / size;
  // The source's own resistance and capacitance take their share.
  ir += vr / sourceResistance - vi * w * sourceCapacitance;
  ii += vi / sourceResistance + vr * w * sourceCapacitance;
  const whole = ir * ir + ii * ii;
  out[0] = ir / whole;
  out[1] = -ii / whole;
  if (!inside) return;
  // Everything was reckoned for one volt at the load; now for one ampere from the source.
  const zr = out[0];
  const zi = out[1];
  for (let n = 0; n + 1 < branches.length * INSIDE_SIZE; n += 2) {
    const re = inside[n] ?? 0;
    const im = inside[n + 1] ?? 0;
    inside[n] = re * zr - im * zi;
    inside[n + 1] = re * zi + im * zr;
  }
}
