/** Resistance side by side with a capacitor or a coil, as good as a resistance and a reactance. */
export interface ParallelEnd {
  /** Ω; null where there is no reactance to be turned. */
  readonly r: number | null;
  /** F; null unless the reactance is that of a capacitor. */
  readonly c: number | null;
  /** H; null unless the reactance is that of a coil. */
  readonly l: number | null;
}

/** A reactance that is less of the resistance than this is none. */
const LEAST = 1e-6;

/**
 * Turns a series impedance into its parallel equivalent: Rp = (R² + X²)/R, Xp = (R² + X²)/X.
 *
 * @param f Hz
 */
export function parallelEnd([r, x]: readonly [number, number], f: number): ParallelEnd {
  if (Math.abs(x) < LEAST * r) return { r: null, c: null, l: null };
  const square = r * r + x * x;
  const w = 2 * Math.PI * f;
  return {
    r: square / r,
    c: x < 0 ? -x / (w * square) : null,
    l: x > 0 ? square / (w * x) : null,
  };
}
