import type { Ladder } from './ladder.ts';
import { LEAKY_SIZE, leakyDrive } from './leakyDrive.ts';
import { leakyPowerGain } from './leakyPowerGain.ts';
import { shuntPowerGain } from './shuntPowerGain.ts';

const DB = 10 / Math.LN10;

/**
 * Transducer gain of a ladder at one frequency, dB: power in the load over the power that the
 * source could give at most.
 *
 * One ampere in the load is followed back to the source: each series arm adds voltage, each shunt
 * arm adds current. Exact for any ladder, no complex objects, nothing allocated.
 *
 * @param f Hz, above zero
 */
export function gainAt(ladder: Ladder, f: number): number {
  return DB * Math.log(powerGainAt(ladder, f));
}

/**
 * Transducer gain over a set of frequencies.
 *
 * @param frequency Hz
 * @param gain receives dB, as long as `frequency`
 */
export function ladderGain(ladder: Ladder, frequency: Float64Array, gain: Float64Array): void {
  for (let i = 0; i < frequency.length; i += 1) {
    gain[i] = DB * Math.log(powerGainAt(ladder, frequency[i] as number));
  }
}

/** Transducer gain as a plain ratio of powers. */
export function powerGainAt(ladder: Ladder, f: number): number {
  if (ladder.leakage > 0 && ladder.form !== 'shunt') return leakyPowerGain(ladder, f);
  if (ladder.leakage > 0) {
    const { source, load } = ladder;
    leakyDrive(ladder, f, scratch);
    const re = scratch[0] as number;
    const im = scratch[1] as number;
    return (4 * source[0] * load[0]) / (re * re + im * im);
  }
  if (ladder.form === 'shunt') return shuntPowerGain(ladder, f);
  const { lm, cm, rm, c0, series, coupling, stray, endC, source, load } = ladder;
  const w = 2 * Math.PI * f;
  const perW = 1 / w;
  const tan = 1 / ladder.capacitorQ;
  let vr = load[0];
  let vi = load[1];
  let ir = 1;
  let ii = 0;
  if (endC[1] > 0) {
    const b = w * endC[1];
    const g = b * tan;
    ir += g * vr - b * vi;
    ii += g * vi + b * vr;
  }
  for (let k = lm.length - 1; k >= 0; k -= 1) {
    // The crystal: Z = (Rm + jXm)/(1 + jωC0(Rm + jXm)).
    const r = rm[k] as number;
    const xm = w * (lm[k] as number) - perW / (cm[k] as number);
    const b0 = w * (c0[k] as number);
    const dr = 1 - b0 * xm;
    const di = b0 * r;
    const d = 1 / (dr * dr + di * di);
    let zr = (r * dr + xm * di) * d;
    let zx = (xm * dr - r * di) * d;
    const s = series[k] as number;
    if (s > 0) {
      const x = perW / s;
      zr += x * tan;
      zx -= x;
    }
    vr += zr * ir - zx * ii;
    vi += zr * ii + zx * ir;
    if (k > 0) {
      const c = coupling[k - 1] as number;
      const g = w * c * tan;
      const b = w * (c + (stray[k - 1] as number));
      ir += g * vr - b * vi;
      ii += g * vi + b * vr;
    }
  }
  if (endC[0] > 0) {
    const b = w * endC[0];
    const g = b * tan;
    ir += g * vr - b * vi;
    ii += g * vi + b * vr;
  }
  const er = vr + source[0] * ir - source[1] * ii;
  const ei = vi + source[0] * ii + source[1] * ir;
  return (4 * source[0] * load[0]) / (er * er + ei * ei);
}

const scratch = new Float64Array(LEAKY_SIZE);
