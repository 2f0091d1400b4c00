/**
 * What the rig doesn't say of its final, and what is taken instead. SI units.
 * Common practice, no source.
 */
export const assumed = {
  /** Emitter resistor, and the inductance of lead and track to ground. */
  ballast: 0.5,
  lead: 5e-9,
  /** Resistance of the winding between supply and collector. */
  feed: 0.1,
  /** Bias: its source's resistance for direct current; for the signal it comes through a winding. */
  bias: 10,
  /** Resistor from base to ground. */
  shunt: 33,
} as const;
