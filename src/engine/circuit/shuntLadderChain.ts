import type { Ladder } from './ladder.ts';

/**
 * Follows voltage and current through a ladder of the shunt form, with their derivatives by angular
 * frequency: `ladderChain` for crystals to ground and coupling capacitors in series.
 *
 * @param f Hz
 * @param state as in `ladderChain`
 * @param backwards from the source end to the load end
 */
export function shuntLadderChain(
  ladder: Ladder,
  f: number,
  state: Float64Array,
  backwards: boolean,
): void {
  const { lm, cm, rm, c0, series, coupling, stray, endC, capacitorQ } = ladder;
  const w = 2 * Math.PI * f;
  const tan = 1 / capacitorQ;
  const n = lm.length;
  let vr = state[0] as number;
  let vi = state[1] as number;
  let ir = state[2] as number;
  let ii = state[3] as number;
  let ur = state[4] as number;
  let ui = state[5] as number;
  let jr = state[6] as number;
  let ji = state[7] as number;
  for (let step = 0; step < n; step += 1) {
    const k = backwards ? step : n - 1 - step;
    const r = rm[k] as number;
    const l = lm[k] as number;
    const perC = 1 / (w * (cm[k] as number));
    const xm = w * l - perC;
    // The arm is y = 1/(Rm + jXm); its derivative is −jXm′·y².
    const size = 1 / (r * r + xm * xm);
    const yr = r * size;
    const yi = -xm * size;
    const slope = l + perC / w;
    const fitted = (series[k] as number) + (k === 0 ? endC[0] : 0) + (k === n - 1 ? endC[1] : 0);
    const all = fitted + (c0[k] as number) + (stray[k] as number);
    const g = yr + w * fitted * tan;
    const b = yi + w * all;
    const gp = 2 * slope * yr * yi + fitted * tan;
    const bp = -slope * (yr * yr - yi * yi) + all;
    ir += g * vr - b * vi;
    ii += g * vi + b * vr;
    jr += gp * vr - bp * vi + g * ur - b * ui;
    ji += gp * vi + bp * vr + g * ui + b * ur;
    if (step === n - 1) break;
    // The coupling capacitor: Z = x·tan − jx with x = 1/(ωC), x′ = −x/ω.
    const x = 1 / (w * (coupling[backwards ? k : k - 1] as number));
    const xp = -x / w;
    vr += x * (tan * ir + ii);
    vi += x * (tan * ii - ir);
    ur += xp * (tan * ir + ii) + x * (tan * jr + ji);
    ui += xp * (tan * ii - ir) + x * (tan * ji - jr);
  }
  state[0] = vr;
  state[1] = vi;
  state[2] = ir;
  state[3] = ii;
  state[4] = ur;
  state[5] = ui;
  state[6] = jr;
  state[7] = ji;
}
