/**
 * A crystal ladder as built. H, F, Ω.
 *
 * Series form: crystals in series from source to load, a coupling capacitor to ground at each
 * junction, a series capacitor in a mesh where one is needed. Shunt form, its dual: a crystal to
 * ground at each node, a coupling capacitor from each node to the next, a capacitor beside a
 * crystal where one is needed.
 * Every position has its own parts; plain arrays, so that a build can be varied in place.
 */
export interface Ladder {
  /** Where the crystals stand; left out for the series form. */
  readonly form?: 'series' | 'shunt';
  readonly lm: Float64Array;
  readonly cm: Float64Array;
  readonly rm: Float64Array;
  readonly c0: Float64Array;
  /** Aligning capacitor of each position: in series with its crystal, in the shunt form across it;
   *  0 where there is none. */
  readonly series: Float64Array;
  /** Coupling capacitors, one fewer than crystals: at each junction to ground, in the shunt form
   *  from node to node. */
  readonly coupling: Float64Array;
  /** Stray capacitance to ground, lossless, beside what is fitted: at each junction, one fewer than
   *  crystals; in the shunt form at each node, as many as crystals. */
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
