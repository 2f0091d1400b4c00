import type { Ladder } from './ladder.ts';
import { CHAIN_SIZE, ladderChain } from './ladderChain.ts';

/** Numbers that `leakyDrive` writes. */
export const LEAKY_SIZE = 5;

const open = new Float64Array(CHAIN_SIZE);
const short = new Float64Array(CHAIN_SIZE);

/**
 * The source voltage that drives one ampere through the load of a ladder with a capacitance past
 * it, and what the filter shows at its source end.
 *
 * An open and a shorted end give the ladder's chain matrix A, B, C, D. With an admittance y from
 * input to output, and AD − BC = 1, the voltage at the input is (B + (A + yB)·Zl)/(1 + yB) and the
 * current (D + yB + (C + y(A + D − 2))·Zl)/(1 + yB).
 *
 * @param f Hz
 * @param out receives Re, Im of the source voltage (V), Re, Im of the input impedance (Ω), and the
 *   group delay (s)
 * @param backwards the same seen from the load's end
 */
export function leakyDrive(ladder: Ladder, f: number, out: Float64Array, backwards = false): void {
  open.fill(0);
  open[0] = 1;
  ladderChain(ladder, f, open, backwards);
  short.fill(0);
  short[2] = 1;
  ladderChain(ladder, f, short, backwards);
  const [sr, si] = backwards ? ladder.load : ladder.source;
  const [lr, li] = backwards ? ladder.source : ladder.load;
  // y = jb; a prime is the derivative by ω, and so is a trailing p: y′ = j·leakage.
  const bp = ladder.leakage;
  const b = 2 * Math.PI * f * bp;
  const [ar, ai, cr, ci, arp, aip, crp, cip] = open as unknown as Eight;
  const [br, bi, dr, di, brp, bip, drp, dip] = short as unknown as Eight;
  // yB and its derivative.
  const kr = -b * bi;
  const ki = b * br;
  const krp = -bp * bi - b * bip;
  const kip = bp * br + b * brp;
  // C + y(A + D − 2).
  const tr = ar + dr - 2;
  const ti = ai + di;
  const hr = cr - b * ti;
  const hi = ci + b * tr;
  const hrp = crp - bp * ti - b * (aip + dip);
  const hip = cip + bp * tr + b * (arp + drp);
  const vr = br + (ar + kr) * lr - (ai + ki) * li;
  const vi = bi + (ar + kr) * li + (ai + ki) * lr;
  const vrp = brp + (arp + krp) * lr - (aip + kip) * li;
  const vip = bip + (arp + krp) * li + (aip + kip) * lr;
  const ir = dr + kr + hr * lr - hi * li;
  const ii = di + ki + hr * li + hi * lr;
  const irp = drp + krp + hrp * lr - hip * li;
  const iip = dip + kip + hrp * li + hip * lr;
  const nr = vr + sr * ir - si * ii;
  const ni = vi + sr * ii + si * ir;
  const nrp = vrp + sr * irp - si * iip;
  const nip = vip + sr * iip + si * irp;
  const mr = 1 + kr;
  const m = 1 / (mr * mr + ki * ki);
  out[0] = (nr * mr + ni * ki) * m;
  out[1] = (ni * mr - nr * ki) * m;
  const size = 1 / (ir * ir + ii * ii);
  out[2] = (vr * ir + vi * ii) * size;
  out[3] = (vi * ir - vr * ii) * size;
  out[4] = (nip * nr - nrp * ni) / (nr * nr + ni * ni) - (kip * mr - krp * ki) * m;
}

type Eight = [number, number, number, number, number, number, number, number];
