/**
 * A crystal ladder as built: crystals in series from source to load, a coupling capacitor to
 * ground at each junction, a series capacitor in a mesh where one is needed. H, F, Ω.
 * Every position has its own parts; plain arrays, so that a build can be varied in place.
 */
export interface Ladder {
  readonly lm: Float64Array;
  readonly cm: Float64Array;
  readonly rm: Float64Array;
  readonly c0: Float64Array;
  /** Series capacitor of each mesh; 0 where there is none. */
  readonly series: Float64Array;
  /** Capacitor fitted at each junction; one fewer than crystals. */
  readonly coupling: Float64Array;
  /** Stray capacitance to ground at each junction, lossless, beside the fitted one. */
  readonly stray: Float64Array;
  /** Quality factor of all fitted capacitors; Infinity for lossless. */
  readonly capacitorQ: number;
  /** Capacitors to ground at the source's and the load's end; 0 for none. */
  readonly endC: readonly [number, number];
  /** Capacitance from input to output past the whole filter; 0 for none. */
  readonly leakage: number;
  /** Impedances that the filter is fed from and works into, Ω. */
  readonly source: readonly [resistance: number, reactance: number];
  readonly load: readonly [resistance: number, reactance: number];
}

/** The same ladder between other impedances. */
export const between = (
  ladder: Ladder,
  source: Ladder['source'],
  load: Ladder['load'],
): Ladder => ({ ...ladder, source, load });
