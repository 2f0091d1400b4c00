/** The part in series with the crystal: one of the two, or neither where a wire does. */
export interface SeriesPart {
  readonly kind: 'capacitor' | 'coil' | 'none';
  readonly c: number | null;
  readonly l: number | null;
}

/** Reactance below which a wire does as well, Ω. */
const WIRE = 0.01;

/**
 * The part that makes a loop's reactance zero.
 *
 * @param f where it is to oscillate, within reach, Hz
 * @param reactance of the crystal there, Ω
 * @param divider capacitance that the oscillator shows, F
 */
export function seriesPart(f: number, reactance: number, divider: number): SeriesPart {
  const omega = 2 * Math.PI * f;
  const missing = 1 / (omega * divider) - reactance;
  if (Math.abs(missing) < WIRE) return { kind: 'none', c: null, l: null };
  return missing < 0
    ? { kind: 'capacitor', c: -1 / (omega * missing), l: null }
    : { kind: 'coil', c: null, l: missing / omega };
}
