/**
 * A quartz crystal near its main resonance: the motional arm Lm, Cm, Rm in series, shunted by the
 * holder capacitance C0. H, F, Ω, F.
 */
export interface Crystal {
  readonly lm: number;
  readonly cm: number;
  readonly rm: number;
  readonly c0: number;
}

/** The crystal of a series resonance fs (Hz), motional inductance (H), unloaded Q, holder (F). */
export function crystalOf(fs: number, lm: number, qu: number, c0: number): Crystal {
  const omega = 2 * Math.PI * fs;
  return { lm, cm: 1 / (omega * omega * lm), rm: (omega * lm) / qu, c0 };
}

/** Series resonance of the motional arm, Hz. */
export const seriesResonance = ({ lm, cm }: Crystal): number =>
  1 / (2 * Math.PI * Math.sqrt(lm * cm));

/** Parallel resonance with the holder, loss left out, Hz. */
export const parallelResonance = (crystal: Crystal): number =>
  seriesResonance(crystal) * Math.sqrt(1 + crystal.cm / crystal.c0);

/**
 * Reactance of the lossless crystal with its holder, Ω: X = Xm/(1 − ωC0·Xm).
 * It rises from −∞ at 0 through 0 at fs to +∞ at fp, and from −∞ again above.
 *
 * @param f Hz
 */
export function crystalReactance({ lm, cm, c0 }: Crystal, f: number): number {
  const omega = 2 * Math.PI * f;
  const xm = omega * lm - 1 / (omega * cm);
  return xm / (1 - omega * c0 * xm);
}

/**
 * The frequency below fp at which the lossless crystal has a given reactance, Hz.
 *
 * With u = (f/fs)² − 1, r = C0/Cm and x = X·ωs·Cm the reactance obeys x·√(1+u)·(1 − r·u) = u.
 * u = x/(1 + r·x) is within a fraction u of the root, and Newton's steps end at full precision;
 * working with u keeps the digits that f² − fs² would lose.
 *
 * @param x reactance, Ω; above −1/(ωs·C0) times about one half, where r·x stays over −1
 */
export function frequencyAtReactance(crystal: Crystal, reactance: number): number {
  const fs = seriesResonance(crystal);
  return fs * Math.sqrt(1 + excess(crystal, fs, reactance));
}

/** (f/fs)² − 1 at which the reactance is reached. */
function excess({ cm, c0 }: Crystal, fs: number, reactance: number): number {
  const x = reactance * 2 * Math.PI * fs * cm;
  const r = c0 / cm;
  let u = x / (1 + Math.max(r * x, -0.5));
  for (let i = 0; i < 60; i += 1) {
    const root = Math.sqrt(1 + u);
    const off = x * root * (1 - r * u) - u;
    const slope = (x * (1 - r * u)) / (2 * root) - x * root * r - 1;
    // Never past −1, where the frequency would be zero.
    const next = Math.max(u - off / slope, (u - 1) / 2);
    if (Math.abs(next - u) <= 1e-15 * Math.abs(next) || next === u) return next;
    u = next;
  }
  return u;
}
