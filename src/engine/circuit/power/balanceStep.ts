import { addSpectrum, type BalanceDesk, coefficientsOf, waveOf } from './balanceDesk.ts';
import { type GummelPoon, gummelPoon } from './gummelPoon.ts';

/**
 * The linear circuit round the inner transistor, seen from its two junctions, at each harmonic:
 * the voltages are e − z·(junction currents).
 */
export interface Surroundings {
  /** Fundamental, Hz. */
  readonly frequency: number;
  /** Re, Im of z11, z12, z21, z22 for each harmonic from 0, Ω. */
  readonly z: Float64Array;
  /** Re, Im of e1, e2 for each harmonic from 0, V peak. */
  readonly e: Float64Array;
}

/** Numbers a harmonic takes in `Surroundings.z` and `.e`. */
export const Z_SIZE = 8;
export const E_SIZE = 4;

/**
 * Residual of Kirchhoff's voltage law, v + z·i(v) − e, at every harmonic, in `desk.residual`;
 * the currents stay in `desk.current`, the derivatives in `desk.waves`.
 *
 * @param x unknowns as `BalanceDesk` says
 * @return sum of the residual's squares, V²; NaN where the voltages are out of all bounds
 */
export function balanceResidual(
  desk: BalanceDesk,
  model: GummelPoon,
  around: Surroundings,
  x: Float64Array,
): number {
  const { frequency, e } = around;
  const { waves, current, width, harmonics, residual } = desk;
  const w = 2 * Math.PI * frequency;
  waveOf(desk, x, 0, waves.vbe);
  waveOf(desk, x, width, waves.vbc);
  gummelPoon(model, waves);
  current.fill(0);
  addSpectrum(desk, waves.ibe, 0, current, 0);
  addSpectrum(desk, waves.ibc, 0, current, width);
  if (harmonics > 0) {
    addSpectrum(desk, waves.qbe, w, current, 0);
    addSpectrum(desk, waves.qbc, w, current, width);
  }
  voltageLoss(desk, around, residual);
  let sum = 0;
  for (let k = 0; k <= harmonics; k += 1) {
    const at = k === 0 ? 0 : 2 * k - 1;
    for (let p = 0; p < 2; p += 1) {
      const n = p * width + at;
      const s = k * E_SIZE + 2 * p;
      const re = (residual[n] ?? 0) + (x[n] ?? 0) - (e[s] ?? 0);
      residual[n] = re;
      sum += re * re;
      if (k === 0) continue;
      const im = (residual[n + 1] ?? 0) + (x[n + 1] ?? 0) - (e[s + 1] ?? 0);
      residual[n + 1] = im;
      sum += im * im;
    }
  }
  return sum;
}

/** Voltages that `desk.current` loses in the surroundings, z·i, laid out like the unknowns. */
export function voltageLoss(
  { current, width, harmonics }: BalanceDesk,
  { z }: Surroundings,
  out: Float64Array,
): void {
  for (let k = 0; k <= harmonics; k += 1) {
    const at = k === 0 ? 0 : 2 * k - 1;
    const ar = current[at] ?? 0;
    const ai = k === 0 ? 0 : (current[at + 1] ?? 0);
    const br = current[width + at] ?? 0;
    const bi = k === 0 ? 0 : (current[width + at + 1] ?? 0);
    for (let p = 0; p < 2; p += 1) {
      const o = k * Z_SIZE + 4 * p;
      const lr = z[o] ?? 0;
      const li = z[o + 1] ?? 0;
      const mr = z[o + 2] ?? 0;
      const mi = z[o + 3] ?? 0;
      const n = p * width + at;
      out[n] = lr * ar - li * ai + mr * br - mi * bi;
      if (k > 0) out[n + 1] = lr * ai + li * ar + mr * bi + mi * br;
    }
  }
}

/** Derivative of the residual by the unknowns, in `desk.matrix`, row after row; the waveforms' derivatives must stand in the desk. */
export function balanceJacobian(desk: BalanceDesk, { frequency, z }: Surroundings): void {
  const { waves, width, harmonics, conductance, capacitance, rows, matrix } = desk;
  const [gee, gec, gce, gcc] = conductance as [Spectrum, Spectrum, Spectrum, Spectrum];
  const [cee, cec, cce, ccc] = capacitance as [Spectrum, Spectrum, Spectrum, Spectrum];
  const [eRe, eIm, cRe, cIm] = rows as [Spectrum, Spectrum, Spectrum, Spectrum];
  coefficientsOf(desk, waves.gee, gee);
  coefficientsOf(desk, waves.gec, gec);
  coefficientsOf(desk, waves.gce, gce);
  coefficientsOf(desk, waves.gcc, gcc);
  coefficientsOf(desk, waves.cee, cee);
  coefficientsOf(desk, waves.cec, cec);
  coefficientsOf(desk, waves.ccc, ccc);
  const w = 2 * Math.PI * frequency;
  const size = 2 * width;
  for (let k = 0; k <= harmonics; k += 1) {
    currentRows(k, k * w, gee, cee, harmonics, eRe, eIm, 0);
    currentRows(k, k * w, gec, cec, harmonics, eRe, eIm, width);
    currentRows(k, k * w, gce, cce, harmonics, cRe, cIm, 0);
    currentRows(k, k * w, gcc, ccc, harmonics, cRe, cIm, width);
    const at = k === 0 ? 0 : 2 * k - 1;
    for (let p = 0; p < 2; p += 1) {
      const o = k * Z_SIZE + 4 * p;
      const lr = z[o] ?? 0;
      const li = z[o + 1] ?? 0;
      const mr = z[o + 2] ?? 0;
      const mi = z[o + 3] ?? 0;
      const n = p * width + at;
      const re = n * size;
      const im = re + size;
      for (let j = 0; j < size; j += 1) {
        const a = eRe[j] ?? 0;
        const b = eIm[j] ?? 0;
        const c = cRe[j] ?? 0;
        const d = cIm[j] ?? 0;
        matrix[re + j] = lr * a - li * b + mr * c - mi * d;
        if (k > 0) matrix[im + j] = lr * b + li * a + mr * d + mi * c;
      }
      matrix[re + n] = (matrix[re + n] ?? 0) + 1;
      if (k > 0) matrix[im + n + 1] = (matrix[im + n + 1] ?? 0) + 1;
    }
  }
}

type Spectrum = Float64Array;

/**
 * Derivative of one junction's current at harmonic k by one junction's voltage:
 * I_k = 2g_k·V_0 + Σ (g_{k−l}·V_l + g_{k+l}·V_l*), and the same with jkω·c for the charge.
 */
function currentRows(
  k: number,
  kw: number,
  g: Spectrum,
  c: Spectrum,
  harmonics: number,
  re: Spectrum,
  im: Spectrum,
  from: number,
): void {
  if (k === 0) {
    re[from] = g[0] ?? 0;
    for (let l = 1; l <= harmonics; l += 1) {
      re[from + 2 * l - 1] = g[2 * l] ?? 0;
      re[from + 2 * l] = g[2 * l + 1] ?? 0;
    }
    return;
  }
  re[from] = 2 * ((g[2 * k] ?? 0) - kw * (c[2 * k + 1] ?? 0));
  im[from] = 2 * ((g[2 * k + 1] ?? 0) + kw * (c[2 * k] ?? 0));
  for (let l = 1; l <= harmonics; l += 1) {
    const d = 2 * Math.abs(k - l);
    const side = k >= l ? 1 : -1;
    const s = 2 * (k + l);
    const gp = g[d] ?? 0;
    const gq = side * (g[d + 1] ?? 0);
    const gr = g[s] ?? 0;
    const gs = g[s + 1] ?? 0;
    const cp = c[d] ?? 0;
    const cq = side * (c[d + 1] ?? 0);
    const cr = c[s] ?? 0;
    const cs = c[s + 1] ?? 0;
    const at = from + 2 * l - 1;
    re[at] = gp + gr - kw * (cq + cs);
    re[at + 1] = gs - gq - kw * (cp - cr);
    im[at] = gq + gs + kw * (cp + cr);
    im[at + 1] = gp - gr + kw * (cs - cq);
  }
}
