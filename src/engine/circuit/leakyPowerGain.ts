import type { Ladder } from './ladder.ts';

/**
 * Transducer gain, as a plain ratio of powers, of a ladder in the series form with a capacitance
 * past it: what `leakyDrive` gives, without the derivatives.
 *
 * An open and a shorted end are followed to the source side by side; each crystal is worked once.
 *
 * @param f Hz
 */
export function leakyPowerGain(ladder: Ladder, f: number): number {
  const { lm, cm, rm, c0, series, coupling, stray, endC, source, load } = ladder;
  const w = 2 * Math.PI * f;
  const perW = 1 / w;
  const tan = 1 / ladder.capacitorQ;
  // A and C from an open end, B and D from a shorted one.
  let ar = 1;
  let ai = 0;
  let cr = w * endC[1] * tan;
  let ci = w * endC[1];
  let br = 0;
  let bi = 0;
  let dr = 1;
  let di = 0;
  for (let k = lm.length - 1; k >= 0; k -= 1) {
    const r = rm[k] as number;
    const xm = w * (lm[k] as number) - perW / (cm[k] as number);
    const b0 = w * (c0[k] as number);
    const ur = 1 - b0 * xm;
    const ui = b0 * r;
    const u = 1 / (ur * ur + ui * ui);
    let zr = (r * ur + xm * ui) * u;
    let zx = (xm * ur - r * ui) * u;
    const s = series[k] as number;
    if (s > 0) {
      const x = perW / s;
      zr += x * tan;
      zx -= x;
    }
    ar += zr * cr - zx * ci;
    ai += zr * ci + zx * cr;
    br += zr * dr - zx * di;
    bi += zr * di + zx * dr;
    const c = k > 0 ? (coupling[k - 1] as number) : endC[0];
    const g = w * c * tan;
    const b = w * (k > 0 ? c + (stray[k - 1] as number) : c);
    cr += g * ar - b * ai;
    ci += g * ai + b * ar;
    dr += g * br - b * bi;
    di += g * bi + b * br;
  }
  // With y = jωC past it: V = (B + (A + yB)Zl)/(1 + yB), I = (D + yB + (C + y(A + D − 2))Zl)/(1 + yB).
  const y = w * ladder.leakage;
  const kr = -y * bi;
  const ki = y * br;
  const hr = cr - y * (ai + di);
  const hi = ci + y * (ar + dr - 2);
  const [lr, li] = load;
  const vr = br + (ar + kr) * lr - (ai + ki) * li;
  const vi = bi + (ar + kr) * li + (ai + ki) * lr;
  const ir = dr + kr + hr * lr - hi * li;
  const ii = di + ki + hr * li + hi * lr;
  const er = vr + source[0] * ir - source[1] * ii;
  const ei = vi + source[0] * ii + source[1] * ir;
  const past = (1 + kr) * (1 + kr) + ki * ki;
  return (4 * source[0] * lr * past) / (er * er + ei * ei);
}
