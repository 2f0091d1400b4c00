/** A crystal as an oscillator meets it. */
export interface OscillatorCrystal {
  /** Series resonance, Hz. */
  readonly fs: number;
  /** Motional inductance, H. */
  readonly lm: number;
  /** Motional resistance, Ω. */
  readonly rm: number;
  /** Holder capacitance and what else lies across the crystal, F. */
  readonly c0: number;
}

/**
 * What a Colpitts oscillator shows the crystal and the part in series with it: C1 (base to emitter,
 * the transistor's own capacitance in it) in series with C2 (emitter to ground), and what lies from
 * base to ground, collector capacitance and stray, across both. F.
 */
export interface Divider {
  readonly c1: number;
  readonly c2: number;
  readonly base: number;
}

/** Capacitance that the oscillator shows the crystal, F: C1 and C2 in series, and the base's. */
export function dividerCapacitance({ c1, c2, base }: Divider): number {
  return (c1 * c2) / (c1 + c2) + base;
}

/**
 * Reactance of a crystal, C0 and loss in it, Ω.
 *
 * With Xm = 2πLm(f² − fs²)/f and a = 1 − ωC0·Xm: Im[(Rm + jXm)/(a + jωC0·Rm)].
 * @param f frequency, Hz
 * Source: closed form of the equivalent circuit, IEC 60122-1.
 */
export function reactanceAt({ fs, lm, rm, c0 }: OscillatorCrystal, f: number): number {
  const xm = (2 * Math.PI * lm * (f - fs) * (f + fs)) / f;
  const b0 = 2 * Math.PI * f * c0;
  const a = 1 - b0 * xm;
  const b = b0 * rm;
  return (xm * a - rm * b) / (a * a + b * b);
}

/**
 * Resistance of a crystal at a frequency, C0 in it, Ω. At a load CL it is Rm(1 + C0/CL)², the
 * makers' formula, to within (ωC0·Rm)².
 * @param f frequency, Hz
 */
export function resistanceAt({ fs, lm, rm, c0 }: OscillatorCrystal, f: number): number {
  const xm = (2 * Math.PI * lm * (f - fs) * (f + fs)) / f;
  const b0 = 2 * Math.PI * f * c0;
  const a = 1 - b0 * xm;
  const b = b0 * rm;
  return rm / (a * a + b * b);
}

/**
 * Negative resistance that the transistor shows the crystal as it starts, Ω (a negative number).
 *
 * C1, C2 and gm in series are −gm/(ω²C1C2) − j/(ωC12); the capacitance at the base lies across both
 * and divides it.
 * @param f frequency, Hz
 * @param gm transconductance at the standing current, A/V
 * Holds while the transistor's input resistance and the emitter resistor are large against the
 * reactances of C1 and C2.
 */
export function negativeResistance({ c1, c2, base }: Divider, f: number, gm: number): number {
  const omega = 2 * Math.PI * f;
  const r = gm / (omega * omega * c1 * c2);
  const x = 1 / (omega * c1) + 1 / (omega * c2);
  const b = omega * base;
  return -r / ((1 + b * x) ** 2 + (b * r) ** 2);
}

/**
 * Rate at which crystal, load capacitance and series inductor together turn inductive, Ω/Hz.
 * With it, a change of frequency follows from a change of reactance. Loss is left out here: it
 * moves the slope by parts in a thousand.
 * @param f where the loop's reactance is zero, Hz
 */
export function loopSlope({ fs, lm, c0 }: OscillatorCrystal, f: number, l: number): number {
  const omega = 2 * Math.PI * f;
  const xm = (2 * Math.PI * lm * (f - fs) * (f + fs)) / f;
  const a = 1 - omega * c0 * xm;
  const dxm = 2 * Math.PI * lm * (1 + (fs / f) ** 2);
  // The load capacitance balances crystal and inductor, so its own slope follows from their sum.
  const load = xm / a + omega * l;
  return (dxm + 2 * Math.PI * c0 * xm * xm) / (a * a) + 2 * Math.PI * l + load / f;
}

/**
 * Frequency at which the reactance of the loop is zero, Hz, or null where it never is.
 *
 * @param load capacitance in series with the crystal, all of it, F; Infinity is a short circuit
 * @param l inductance in series with the crystal, H
 *
 * The transistor supplies what the resistances take and no reactance: so it is once the amplitude
 * has settled. A crystal with loss has two zeros; the one nearer to fs, where the reactance rises,
 * is meant. No zero: the load is too small for the crystal's loss, or the coil resonates with C0
 * and the crystal has no say.
 *
 * The reactance T that balances the rest hardly changes over a crystal's range, so: T at the last
 * estimate, the motional reactance that gives it (a quadratic), the frequency of that, and again.
 */
export function pulledFrequency(x: OscillatorCrystal, load: number, l = 0): number | null {
  let f = x.fs;
  for (let i = 0; i < 50; i += 1) {
    const omega = 2 * Math.PI * f;
    const xm = motionalReactance(x, omega, 1 / (omega * load) - omega * l);
    if (xm === null) return null;
    const half = xm / (4 * Math.PI * x.lm);
    const next = half + Math.sqrt(half * half + x.fs * x.fs);
    if (Math.abs(next - f) < 1e-15 * f) return next;
    f = next;
  }
  return f;
}

/** Motional reactance with which the crystal's whole reactance is `t`, Ω: the smaller root. */
function motionalReactance({ rm, c0 }: OscillatorCrystal, omega: number, t: number): number | null {
  const b0 = omega * c0;
  const p = 1 + b0 * t;
  const q = (2 * b0 * rm * p) ** 2;
  if (p <= 0 || q > 1) return null;
  // 1 − √(1 − q), written so that it keeps its digits.
  return (2 * b0 * t + q / (1 + Math.sqrt(1 - q))) / (2 * b0 * p);
}
