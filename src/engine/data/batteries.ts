/** A kind of battery, as far as a field day asks. */
export interface Battery {
  readonly title: string;
  /** Share of the printed capacity that may be used without harm. */
  readonly usable: number;
  /** Peukert's exponent: how much less a strong current gets out. 1: nothing. */
  readonly peukert: number;
  /** Voltage at which to stop, over the nominal one of the rig's supply. */
  readonly end: number;
}

/** Hours over which capacity is printed. */
export const RATED_HOURS = 20;

/** Kinds of batteries. Common practice, no source; Peukert's exponent of lead from 1.1 to 1.3. */
export const batteries = {
  lead: { title: 'Lead, gel or fleece', usable: 0.5, peukert: 1.2, end: 11.5 / 12.6 },
  ironPhosphate: { title: 'Lithium iron phosphate', usable: 0.9, peukert: 1.05, end: 12 / 13.2 },
  lithiumIon: { title: 'Lithium ion', usable: 0.8, peukert: 1.05, end: 10.5 / 12 },
  nickel: { title: 'Nickel–metal hydride', usable: 0.9, peukert: 1.1, end: 10 / 12 },
  alkaline: { title: 'Alkaline cells', usable: 0.7, peukert: 1.3, end: 9 / 12 },
} as const satisfies Record<string, Battery>;
