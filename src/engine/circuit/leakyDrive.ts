import type { Ladder } from './ladder.ts';
import { CHAIN_SIZE, ladderChain } from './ladderChain.ts';

const open = new Float64Array(CHAIN_SIZE);
const short = new Float64Array(CHAIN_SIZE);

/**
 * The source voltage that drives one ampere through the load of a ladder with a capacitance past
 * it, and what the filter shows at its source end.
 *
 * The ladder's chain parameters (from an open and a shorted end) become admittances, to which the
 * bridging capacitance adds.
 *
 * @param f Hz
 * @param out receives Re, Im of the source voltage (V), Re, Im of the input impedance (Ω)
 * @param backwards the same seen from the load's end
 */
export function leakyDrive(ladder: Ladder, f: number, out: Float64Array, backwards = false): void {
  open.fill(0);
  open[0] = 1;
  ladderChain(ladder, f, open, backwards);
  short.fill(0);
  short[2] = 1;
  ladderChain(ladder, f, short, backwards);
  const zs = backwards ? ladder.load : ladder.source;
  const zl = backwards ? ladder.source : ladder.load;
  const b = 2 * Math.PI * f * ladder.leakage;
  const br = short[0] as number;
  const bi = short[1] as number;
  const m = 1 / (br * br + bi * bi);
  // y11 = D/B + jb, y22 = A/B + jb, −y12 = −y21 = 1/B + jb.
  const ar = ((open[0] as number) * br + (open[1] as number) * bi) * m;
  const ai = ((open[1] as number) * br - (open[0] as number) * bi) * m + b;
  const er = ((short[2] as number) * br + (short[3] as number) * bi) * m;
  const ei = ((short[3] as number) * br - (short[2] as number) * bi) * m + b;
  const tr = br * m;
  const ti = b - bi * m;
  // With V2 = Zl and one ampere in the load: V1 = (1 + y22·Zl)/(−y21), I1 = y11·V1 + y12·Zl.
  const nr = 1 + ar * zl[0] - ai * zl[1];
  const ni = ar * zl[1] + ai * zl[0];
  const t = 1 / (tr * tr + ti * ti);
  const vr = (nr * tr + ni * ti) * t;
  const vi = (ni * tr - nr * ti) * t;
  const ir = er * vr - ei * vi - (tr * zl[0] - ti * zl[1]);
  const ii = er * vi + ei * vr - (tr * zl[1] + ti * zl[0]);
  out[0] = vr + zs[0] * ir - zs[1] * ii;
  out[1] = vi + zs[0] * ii + zs[1] * ir;
  const size = 1 / (ir * ir + ii * ii);
  out[2] = (vr * ir + vi * ii) * size;
  out[3] = (vi * ir - vr * ii) * size;
}
