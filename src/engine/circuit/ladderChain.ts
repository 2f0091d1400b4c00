import type { Ladder } from './ladder.ts';
import { shuntLadderChain } from './shuntLadderChain.ts';

/** Numbers that `ladderChain` keeps in its state: V, I and their derivatives, complex. */
export const CHAIN_SIZE = 8;

/**
 * Follows voltage and current through a ladder from its load end to its source end, with their
 * derivatives by angular frequency. End capacitors included, leakage and terminations not.
 *
 * @param f Hz
 * @param backwards from the source end to the load end instead, for the output side
 * @param state in: at the starting end, out: at the other end. Re V, Im V, Re I, Im I in V and A,
 *   then the derivatives of the same by ω, V·s and A·s. I flows towards the starting end.
 */
export function ladderChain(
  ladder: Ladder,
  f: number,
  state: Float64Array,
  backwards = false,
): void {
  if (ladder.form === 'shunt') {
    shuntLadderChain(ladder, f, state, backwards);
    return;
  }
  const { lm, cm, rm, c0, series, coupling, stray, endC, capacitorQ } = ladder;
  const w = 2 * Math.PI * f;
  const tan = 1 / capacitorQ;
  const n = lm.length;
  shunt(state, w, endC[backwards ? 0 : 1], 0, tan);
  for (let step = 0; step < n; step += 1) {
    const k = backwards ? step : n - 1 - step;
    const c = cm[k] as number;
    const r = rm[k] as number;
    const l = lm[k] as number;
    const xm = w * l - 1 / (w * c);
    const slope = l + 1 / (w * w * c);
    const ch = c0[k] as number;
    // The crystal and its derivative: Z = Zm/D, D = 1 + jωC0·Zm; Z′ = (Zm′ − jC0·Zm²)/D².
    const dr = 1 - w * ch * xm;
    const di = w * ch * r;
    const d = 1 / (dr * dr + di * di);
    const ur = dr * d;
    const ui = -di * d;
    let zr = r * ur - xm * ui;
    let zx = r * ui + xm * ur;
    // jC0·Zm² = C0·(−2·r·xm + j(r² − xm²))
    const nr = 2 * ch * r * xm;
    const ni = slope - ch * (r * r - xm * xm);
    const qr = ur * ur - ui * ui;
    const qi = 2 * ur * ui;
    let pr = nr * qr - ni * qi;
    let px = nr * qi + ni * qr;
    const s = series[k] as number;
    if (s > 0) {
      const x = 1 / (w * s);
      zr += x * tan;
      zx -= x;
      pr -= (x * tan) / w;
      px += x / w;
    }
    const ir = state[2] as number;
    const ii = state[3] as number;
    const jr = state[6] as number;
    const ji = state[7] as number;
    state[0] = (state[0] as number) + zr * ir - zx * ii;
    state[1] = (state[1] as number) + zr * ii + zx * ir;
    state[4] = (state[4] as number) + pr * ir - px * ii + zr * jr - zx * ji;
    state[5] = (state[5] as number) + pr * ii + px * ir + zr * ji + zx * jr;
    if (step < n - 1) {
      const at = backwards ? k : k - 1;
      shunt(state, w, coupling[at] as number, stray[at] as number, tan);
    }
  }
  shunt(state, w, endC[backwards ? 1 : 0], 0, tan);
}

/** Adds the current of a capacitor to ground: Y = ωC·tan δ + jω(C + stray). */
function shunt(state: Float64Array, w: number, c: number, stray: number, tan: number): void {
  const b = w * (c + stray);
  if (b === 0) return;
  const g = w * c * tan;
  const vr = state[0] as number;
  const vi = state[1] as number;
  const ur = state[4] as number;
  const ui = state[5] as number;
  const gp = c * tan;
  const bp = c + stray;
  state[2] = (state[2] as number) + g * vr - b * vi;
  state[3] = (state[3] as number) + g * vi + b * vr;
  state[6] = (state[6] as number) + gp * vr - bp * vi + g * ur - b * ui;
  state[7] = (state[7] as number) + gp * vi + bp * vr + g * ui + b * ur;
}
