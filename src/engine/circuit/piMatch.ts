/** Element values of a pi network: C to ground, L, C to ground. */
export interface PiMatch {
  /** Capacitor at the source, F. */
  readonly sourceC: number;
  /** Coil, H. */
  readonly l: number;
  /** Capacitor at the load, F. */
  readonly loadC: number;
}

/**
 * Least loaded Q that a pi network between two resistances can have: there the capacitor at the
 * lower one vanishes, and an L network is left. Q_min = √(R_high/R_low − 1).
 *
 * @param a one resistance, Ω
 * @param b the other, Ω
 */
export function leastPiQ(a: number, b: number): number {
  return Math.sqrt(Math.max(a, b) / Math.min(a, b) - 1);
}

/**
 * Pi network that makes a resistance look like another at one frequency.
 *
 * Loaded Q has several meanings in the books; here it is that of the end with the higher
 * resistance, Q = ωC·R_high. Both ends meet in the virtual resistance R_v = R_high/(Q² + 1), so the
 * other end has Q_low = √(R_low/R_v − 1), and X_L = R_v·(Q + Q_low). Equal ends with Q = 1 give the
 * half-wave network. Lossless; exact at the one frequency.
 *
 * @param source resistance wanted at the input, Ω
 * @param load resistance at the output, Ω
 * @param q loaded Q of the higher end, at least `leastPiQ(source, load)`
 * @param frequency Hz
 * Source: two L networks back to back; any text on impedance matching.
 */
export function piMatch(source: number, load: number, q: number, frequency: number): PiMatch {
  const w = 2 * Math.PI * frequency;
  const high = Math.max(source, load);
  const low = Math.min(source, load);
  const meeting = high / (q * q + 1);
  const qLow = Math.sqrt(Math.max(0, low / meeting - 1));
  const highC = q / (w * high);
  const lowC = qLow / (w * low);
  return {
    sourceC: source >= load ? highC : lowC,
    l: (meeting * (q + qLow)) / w,
    loadC: source >= load ? lowC : highC,
  };
}
