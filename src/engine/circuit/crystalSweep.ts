/** Places of the parameters of a sweep through a crystal, and how many there are. */
export const SWEEP = { fs: 0, lnLm: 1, rm: 2, c0: 3, shunt: 4, level: 5, phase: 6 } as const;
export const SWEEP_SIZE = 7;

/** Numbers that `crystalSweepAt` writes: level and phase, and the slopes of both. */
export const SWEEP_POINT = 2 + 2 * SWEEP_SIZE;

/** Decibels of one neper. */
export const NEPER = 20 / Math.LN10;

/**
 * What a crystal in series between two equal resistances passes at one frequency, and how that
 * changes with each parameter: closed form, derivatives by the chain rule.
 *
 * S21 = g·2R·t²/(2R·t + Z), t = 1/(1 + jωCR), Z = Zm/(1 + jωC0·Zm),
 * Zm = Rm + jωLm(f − fs)(f + fs)/f².
 *
 * @param p parameters by `SWEEP`: fs as an offset from `reference` (Hz), ln of Lm in H, Rm (Ω),
 *   C0 (F), capacitance C from each side of the crystal to ground (F), level g (dB), phase (rad)
 * @param reference Hz
 * @param offset frequency above `reference`, Hz: kept apart so that f − fs keeps its digits
 * @param r resistance at each side, Ω
 * @param out receives the level (nepers), the phase (rad), then the slopes of the level and those
 *   of the phase by each parameter
 */
export function crystalSweepAt(
  p: Float64Array,
  reference: number,
  offset: number,
  r: number,
  out: Float64Array,
): void {
  const f = reference + offset;
  const fs = reference + (p[0] as number);
  const rm = p[2] as number;
  const c0 = p[3] as number;
  const shunt = p[4] as number;
  const w = 2 * Math.PI * f;
  const wl = w * Math.exp(p[1] as number);
  const xm = (wl * (offset - (p[0] as number)) * (f + fs)) / (f * f);
  // u = 1/(1 + jωC0·Zm), Z = Zm·u
  const b = w * c0;
  const dr = 1 - b * xm;
  const di = b * rm;
  const d = 1 / (dr * dr + di * di);
  const ur = dr * d;
  const ui = -di * d;
  const zr = rm * ur - xm * ui;
  const zi = rm * ui + xm * ur;
  // t = 1/(1 + jωCR)
  const a = w * shunt * r;
  const tr = 1 / (1 + a * a);
  const ti = -a * tr;
  // q = 1/(2R·t + Z)
  const vr = 2 * r * tr + zr;
  const vi = 2 * r * ti + zi;
  const v = 1 / (vr * vr + vi * vi);
  const qr = vr * v;
  const qi = -vi * v;
  out[0] = Math.log(2 * r) + Math.log(tr) + 0.5 * Math.log(v) + (p[5] as number) / NEPER;
  out[1] = 2 * Math.atan2(ti, tr) - Math.atan2(vi, vr) + (p[6] as number);
  // By Zm: −q·u²
  const u2r = ur * ur - ui * ui;
  const u2i = 2 * ur * ui;
  const gr = -(qr * u2r - qi * u2i);
  const gi = -(qr * u2i + qi * u2r);
  const byFs = (-2 * wl * fs) / (f * f);
  out[2] = -gi * byFs;
  out[9] = gr * byFs;
  out[3] = -gi * xm;
  out[10] = gr * xm;
  out[4] = gr;
  out[11] = gi;
  // By C0: jωZ²q
  const z2r = zr * zr - zi * zi;
  const z2i = 2 * zr * zi;
  out[5] = -w * (z2r * qi + z2i * qr);
  out[12] = w * (z2r * qr - z2i * qi);
  // By C: (2/t − 2R·q)·(−jωR·t²) = −jωR·(2t − 2R·q·t²)
  const t2r = tr * tr - ti * ti;
  const t2i = 2 * tr * ti;
  const er = 2 * tr - 2 * r * (qr * t2r - qi * t2i);
  const ei = 2 * ti - 2 * r * (qr * t2i + qi * t2r);
  out[6] = w * r * ei;
  out[13] = -w * r * er;
  out[7] = 1 / NEPER;
  out[14] = 0;
  out[8] = 0;
  out[15] = 1;
}
